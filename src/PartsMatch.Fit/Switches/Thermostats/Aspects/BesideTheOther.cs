using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>What the other of two temperatures tells where the one that a thermostat's function is about was not read.</summary>
internal static class BesideTheOther
{
    /// <summary>Why it fails wherever it is to switch: below where it moves on rise, or above where it moves on fall, and 10 °F off is the limit. Null where it may do, where that temperature was read, and where the other one rests on what is only taken.</summary>
    /// <param name="wanted">Where contacts are to move.</param>
    /// <param name="seen">The part's temperatures, as they do for the old one.</param>
    public static Finding? Fails(WantedPoints wanted, TemperaturesFacet seen)
    {
        if (wanted.Main.At(wanted.Tells) is not null && wanted.IsRead(wanted.Tells)) return null;
        if (!wanted.IsRead(wanted.Other) || wanted.RestsOn(wanted.Other) is not null || wanted.Main.At(wanted.Other) is not { } other || seen.Settable is not { } range) return null;
        var isBelow = wanted.Tells == Moving.OnFall;
        var off = Rounded.To(isBelow ? range.Low - other : other - range.High, 2);
        if (Within.AtMost(off, Degrees.Far) || (seen.Main.At(wanted.Tells) is { } shipped && Within.AtMost(isBelow ? shipped - other : other - shipped, Degrees.Near))) return null;
        return Finding.Fails(new Margin(Degrees.Far - off, "K"), $"It can be set {ShownRange.Set(new ShownTemperature(range.Low), new ShownTemperature(range.High))}; it is to switch {(isBelow ? "below" : "above")} {new ShownTemperature(other)}, and 10 °F (5.6 K) off is the limit.");
    }

    /// <summary>The answer by the temperature that is counted from the other by the old one's only differential; none fails by it. Null where nothing can be counted.</summary>
    /// <param name="need">The old one and its place.</param>
    /// <param name="wanted">Where contacts are to move.</param>
    /// <param name="seen">The part's temperatures, as they do for the old one.</param>
    public static Finding? Counted(ThermostatNeed need, WantedPoints wanted, TemperaturesFacet seen)
    {
        if (need.Plate.Differential?.Kelvins is not { IsExact: true, Low: var between } || wanted.Main.At(wanted.Other) is not { } other) return null;
        var counted = Rounded.To(wanted.Tells == Moving.OnFall ? other - between : other + between, 2);
        return TemperatureRule.Against(wanted, counted, seen, wanted.Tells).RestingOn(wanted.Field(wanted.Tells), $"It is counted from {new ShownTemperature(other)} by the old one's differential.", Side.Site);
    }
}
