using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>What volts across a contact say of it: at most 0.5 V is good, over 1 V is bad (practice).</summary>
internal static class ContactDrop
{
    /// <summary>Up to so many a closed contact is good, V.</summary>
    internal const double Good = 0.5;

    /// <summary>Over so many a closed contact is bad, V.</summary>
    internal const double Bad = 1;

    /// <summary>The ruling on a part's own contact, which condemns it; null where nothing was read, or the contacts are open.</summary>
    /// <param name="drop">Volts across it, under load.</param>
    /// <param name="isClosed">Whether its contacts are closed; null when not known.</param>
    public static Ruling? Judge(Measured<ElectricPotential>? drop, bool? isClosed) => Across(drop, isClosed) is { } ruling ? ruling.Verdict == ReadingVerdict.Bad ? ruling.ThePartHasFailed() : ruling : null;

    /// <summary>What the volts say of any contact; null where nothing was read, or the contacts are open.</summary>
    /// <param name="drop">Volts across it, under load.</param>
    /// <param name="isClosed">Whether its contacts are closed; null when not known.</param>
    public static Ruling? Across(Measured<ElectricPotential>? drop, bool? isClosed)
    {
        if (drop is null || isClosed == false) return null;
        var volts = drop.Legs.Max(leg => leg.Volts);
        FormattableString limit = $"at most {Good} V";
        if (Within.AtMost(volts, Good)) return Ruling.Good($"{volts:0.##} V across it; closed contacts lose {Good} V at most.", limit);
        if (isClosed is null) return Ruling.CantTell($"{volts:0.##} V across it; whether its contacts are closed is not known.", limit).ThenRead("isClosed", "Are its contacts closed? Power off, wires off, and measure ohms.");
        return Within.AtMost(volts, Bad)
            ? Ruling.CantTell($"{volts:0.##} V across it lie between {Good} and {Bad} V.", limit)
            : Ruling.Bad($"{volts:0.##} V across closed contacts are over {Bad} V: they are burnt.", limit);
    }
}
