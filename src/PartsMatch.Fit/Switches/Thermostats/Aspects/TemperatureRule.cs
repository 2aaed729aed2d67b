using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>What temperatures read of a thermostat, °C.</summary>
/// <param name="Main">Where its contacts move as shipped; with three wires those that end the defrost.</param>
/// <param name="Fans">Where the fans' contacts move, with three wires.</param>
/// <param name="Lowest">Lowest setting; null when not known, or of one that cannot be set.</param>
/// <param name="Highest">Highest setting; null likewise.</param>
/// <param name="IsAdjustable">Whether it can be set; null when not known.</param>
/// <param name="HasThreeWires">Whether it is a fan delay and a defrost end in one.</param>
/// <param name="IsManual">Whether it is reset by hand, so that where it would close again is of no matter.</param>
/// <param name="Lacking">What its one temperature says nothing without, as it may be either of the two; null where nothing is lacking so.</param>
/// <param name="EitherSide">What is marked of its change-over contacts; null of others.</param>
public readonly record struct TemperaturesFacet(Points Main, Points Fans, double? Lowest, double? Highest, bool? IsAdjustable, bool HasThreeWires, bool IsManual, LackingBeside? Lacking = null, MarkedOfEitherSide? EitherSide = null)
{
    /// <summary>What it can be set to; null when not known, or of one that cannot be set.</summary>
    internal Band? Settable => IsAdjustable != false && Lowest is { } low && Highest is { } high ? new(low, high) : null;

    /// <summary>What it is for a part.</summary>
    internal static TemperaturesFacet Of(ThermostatSpec part) => new(
        Points.Of(part.MarkedWay, part.CutOut, part.CutIn),
        Points.Of(ThermostatAction.OpensOnRise, part.FanCutOut, part.FanCutIn),
        part.Range?.Celsius.Low,
        part.Range?.Celsius.High,
        part.IsAdjustable,
        part.Function == ThermostatFunction.FanDelayAndDefrostEnd,
        part.Reset == ContactReset.Manual,
        part switch
        {
            { Function: ThermostatFunction.FanDelayAndDefrostEnd, CutIn: not null } => null,
            { Action: null, CutOut: not null, CutIn: null } or { Action: null, CutOut: null, CutIn: not null } => LackingBeside.Action,
            { Action: ThermostatAction.ChangeOver, CutOut: not null, CutIn: null } => LackingBeside.CutIn,
            { Action: ThermostatAction.ChangeOver, CutOut: null, CutIn: not null } => LackingBeside.CutOut,
            _ => null,
        },
        MarkedOfEitherSide.Of(part));

    /// <summary>The same as it does for an old one: with three wires the fans' contacts do for a fan delay, and cannot be set.</summary>
    internal TemperaturesFacet For(WantedPoints wanted) => wanted.Function == ThermostatFunction.FanDelay && HasThreeWires
        ? this with { Main = Fans, Lowest = null, Highest = null, IsAdjustable = false, Lacking = null }
        : this;
}

/// <summary>What tells which of the two a part's only temperature is.</summary>
public enum LackingBeside
{
    /// <summary>What its contacts do.</summary>
    Action,

    /// <summary>Where its change-over contacts close.</summary>
    CutIn,

    /// <summary>Where they open.</summary>
    CutOut,
}

/// <summary>One temperature at which a contact moves against the one that is wanted.</summary>
/// <remarks>
/// Within 5 °F meets, up to 10 °F is a check, beyond fails of one that cannot be set; edges belong to the inside. One that can be set is set to the nearest that its range holds, a change. The shortfall grows with the distance and is 1 at 10 °F.
/// </remarks>
internal static class TemperatureRule
{
    /// <summary>What a shortfall is in degrees.</summary>
    public static OwnMeasure Measure { get; } = new("a temperature", "off the one wanted", 0, Degrees.Far, "K");

    /// <summary>One of the two temperatures of its contacts. What would fail for the way that the old one is only taken to move stays open, unless it fails either way.</summary>
    /// <param name="wanted">Where contacts are to move.</param>
    /// <param name="needed">The temperature of it.</param>
    /// <param name="seen">The part's, as they do for the old one.</param>
    /// <param name="moving">Which way the temperature goes.</param>
    public static Finding Against(WantedPoints wanted, double needed, TemperaturesFacet seen, Moving moving)
    {
        var found = Against(needed, seen.Main.At(moving), seen, moving, seen.Lacking is { } lacking ? Field(lacking) : wanted.PartField(moving), "Its contacts");
        if (wanted.RestsOn(moving) is not { } rests) return found;

        // Only of a box thermostat is one temperature about the same, whichever way its contacts go.
        var failsEitherWay = found.Verdict == Verdict.Fails && wanted.Function == ThermostatFunction.Box && wanted.IsRead(moving) && FailsEitherWay(wanted, needed, seen) is not null;
        return failsEitherWay ? found : found.RestingOn(rests.Field, rests.Taken);
    }

    /// <summary>The answer where the temperature that is wanted is not known, or only not which way contacts move at the one that is.</summary>
    /// <param name="wanted">Where contacts are to move.</param>
    /// <param name="field">The site's field of the temperature.</param>
    /// <param name="sentence">What is not known.</param>
    public static Finding NotKnown(WantedPoints wanted, string field, Reason sentence) => wanted.OfEitherWay is { } known
        ? Finding.Unknown(Side.Plate, "action", $"Whether the old contacts open or close on rise is not known, and so not which way they move at {new ShownTemperature(known)}.")
        : Finding.Unknown(Side.Site, field, sentence);

    /// <summary>Why it fails whichever of its temperatures is the one that is wanted; null where it does not, or may not.</summary>
    /// <param name="wanted">Where contacts are to move.</param>
    /// <param name="needed">The temperature of it.</param>
    /// <param name="seen">The part's, as they do for the old one.</param>
    public static Finding? FailsEitherWay(WantedPoints wanted, double needed, TemperaturesFacet seen)
    {
        var one = Against(needed, seen.Main.At(wanted.Tells), seen, wanted.Tells, wanted.PartField(wanted.Tells), "Its contacts");
        var other = Against(needed, seen.Main.At(wanted.Other), seen, wanted.Other, wanted.PartField(wanted.Other), "Its contacts");
        return one.Verdict == Verdict.Fails && other.Verdict == Verdict.Fails ? one : null;
    }

    /// <summary>The finding.</summary>
    /// <param name="wanted">The temperature that is wanted.</param>
    /// <param name="has">The part's as shipped; null when not known.</param>
    /// <param name="facet">What it can be set to.</param>
    /// <param name="moving">Which way the temperature goes.</param>
    /// <param name="field">The part's field.</param>
    /// <param name="whose">What moves: "its contacts".</param>
    public static Finding Against(double wanted, double? has, TemperaturesFacet facet, Moving moving, string field, string whose)
    {
        var way = moving == Moving.OnRise ? "on rise" : "on fall";
        if (has is { } shipped && Degrees.AreNear(shipped, wanted))
        {
            var near = Degrees.Between(shipped, wanted);
            return Finding.Meets($"{whose} move at {new ShownTemperature(shipped)} {way}; {new ShownTemperature(wanted)} within 5 °F (2.8 K) is wanted.") with { Shortfall = near / Degrees.Far, Margin = new(Degrees.Near - near, "K") };
        }

        if (facet.Settable is { } range) return Set(wanted, range, way, whose);
        if (has is not { } fixedAt) return Finding.Unknown(Side.Part, field, $"{new ShownTemperature(wanted)} {way} is wanted; where {InSentence.Of(whose)} move is not known.");
        if (facet.IsAdjustable == true) return Finding.Unknown(Side.Part, "range", $"{whose} move at {new ShownTemperature(fixedAt)} {way} as shipped, and can be set; whether to {new ShownTemperature(wanted)} is not known.");
        var off = Degrees.Between(fixedAt, wanted);
        if (facet.IsAdjustable is null && !Within.AtMost(off, Degrees.Far)) return Finding.Unknown(Side.Part, "isAdjustable", $"{whose} move at {new ShownTemperature(fixedAt)} {way}; {new ShownTemperature(wanted)} is wanted, and whether it can be set is not known.");
        return Within.AtMost(off, Degrees.Far)
            ? Finding.MeetsWith([Check(off, way)], $"{whose} move at {new ShownTemperature(fixedAt)} {way}; {new ShownTemperature(wanted)} is wanted, over 5 °F (2.8 K) off.") with { Shortfall = off / Degrees.Far, Margin = new(Degrees.Far - off, "K") }
            : Finding.Fails(new Margin(Degrees.Far - off, "K"), $"{whose} move at {new ShownTemperature(fixedAt)} {way}; {new ShownTemperature(wanted)} is wanted, and 10 °F (5.6 K) off is the limit.");
    }

    private static string Field(LackingBeside lacking) => lacking switch
    {
        LackingBeside.Action => "action",
        LackingBeside.CutIn => "cutIn",
        _ => "cutOut",
    };

    private static Finding Set(double wanted, Band range, string way, string whose)
    {
        var nearest = Math.Clamp(wanted, range.Low, range.High);
        var off = Degrees.Between(nearest, wanted);
        if (!Within.AtMost(off, Degrees.Far)) return Finding.Fails(new Margin(Degrees.Far - off, "K"), $"It can be set {ShownRange.Set(new ShownTemperature(range.Low), new ShownTemperature(range.High))}; {new ShownTemperature(wanted)} is wanted, and 10 °F (5.6 K) off is the limit.");
        Change set = new(ThermostatChanges.SetThermostat, $"set it so that {InSentence.Of(whose)} move at {new ShownTemperature(nearest)} {way}");
        return Finding.MeetsWith(Within.AtMost(off, Degrees.Near) ? [set] : [set, Check(off, way)], $"It can be set {ShownRange.Set(new ShownTemperature(range.Low), new ShownTemperature(range.High))}; {new ShownTemperature(wanted)} {way} is wanted.") with { Shortfall = off / Degrees.Far, Margin = new(Degrees.Far - off, "K") };
    }

    private static Change Check(double off, string way) => new(ThermostatChanges.CheckTemperature, $"check that it will do: {new ShownDifference(off)} off {way}");
}
