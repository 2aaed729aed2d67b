using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>What pilot duty reads of a contact; null where it is not marked for any.</summary>
/// <param name="MakeVa">VA that it closes on.</param>
/// <param name="BreakVa">VA that it opens.</param>
/// <param name="MostVolts">The greatest volts.</param>
public readonly record struct PilotDutyFacet(double? MakeVa, double? BreakVa, double? MostVolts)
{
    /// <summary>What it is for a part.</summary>
    internal static PilotDutyFacet Of(ContactSpec part) => new(part.PilotDuty?.MakeVa, part.PilotDuty?.BreakVa, part.PilotDuty?.MostVolts);
}

/// <summary>Does the contact switch the coils on it?</summary>
/// <remarks>
/// Holding VA against what it opens, inrush, ten times as much where not given, against what it closes on, at volts up to its greatest; below 120 V the amps of 120 V hold. Edges meet.
/// </remarks>
/// <typeparam name="TSpec">The family's spec.</typeparam>
/// <typeparam name="TSite">The family's site.</typeparam>
public abstract class PilotLoadAspect<TSpec, TSite>() : ContactAspect<TSpec, TSite, PilotDutyFacet>(PilotLoadQuestion.Asked)
    where TSpec : ContactSpec
    where TSite : ContactSite;

/// <summary>The question of one contact.</summary>
internal static class PilotLoadQuestion
{
    /// <summary>The question.</summary>
    public static ContactQuestion<PilotDutyFacet> Asked { get; } = new(
        "Pilot duty",
        ContactSources.PilotDuty,
        new(0.4, 0.5, 0.8),
        new(["pilotDuty"], ["coilsVa", "coilsInrushVa", "loadVolts"]) { Besides = ["loads", "loadCurrent"] },
        PilotDutyFacet.Of,
        Judge)
    {
        Measure = new("a coil load", "of its pilot duty", 0, 100, "%"),
    };

    private static Finding Judge(OnTheContact on, PilotDutyFacet facet) => on.Has(ContactLoad.Coil) switch
    {
        false => Finding.Meets($"No coil is on it."),
        true => AgainstLoad(on, facet),
        null => AgainstOld(on.OldPilot, facet, on.AsksForCoils),
    };

    private static Finding AgainstLoad(OnTheContact on, PilotDutyFacet facet)
    {
        if (on.CoilsVa is not { } holding || on.InrushVa is not { } inrush) return Finding.Unknown(Side.Site, "coilsVa", $"The VA of the coils on it are not known.");
        if (facet is not { MakeVa: { } make, BreakVa: { } open, MostVolts: { } most }) return Finding.Unknown(Side.Part, "pilotDuty", $"Coils of {holding} VA are on it; its pilot duty is not known.");
        var there = on.At(ContactLoad.Coil);
        var volts = there.Figure ?? most;
        if (!Within.AtMost(volts, most)) return Finding.Fails(new Margin(most - volts, "V"), $"Its pilot duty goes up to {most} V; it is to switch {volts} V.");
        var share = PilotDuty.ShareAt(volts);
        var (opens, closes) = (open * share, make * share);
        if (!Within.AtMost(holding, opens)) return Finding.Fails(new Margin(opens - holding, "VA"), $"At {volts} V it opens {opens:0.#} VA of coils; {holding} VA are on it.");
        if (!Within.AtMost(inrush, closes))
        {
            return on.IsInrushGiven
                ? Finding.Fails(new Margin(closes - inrush, "VA"), $"At {volts} V it closes on {closes:0.#} VA of coils; {inrush} VA are on it as they pull in.")
                : Finding.Unknown(Side.Site, "coilsInrushVa", $"At {volts} V it closes on {closes:0.#} VA of coils; ten times the holding VA would be {inrush}, and what they take as they pull in is not known.");
        }

        return there.Figure is null
            ? Finding.Unknown(Side.Site, there.Field, $"It opens {open} VA of coils from 120 V up to {most} V; at which volts it switches is not known.")
            : Finding.Meets($"At {volts} V it opens {opens:0.#} VA of coils and closes on {closes:0.#} VA; {holding} VA are on it, {inrush} VA as they pull in.") with { Shortfall = Math.Max(holding / opens, inrush / closes), Margin = new(opens - holding, "VA") };
    }

    private static Finding AgainstOld(PilotDutyFacet old, PilotDutyFacet facet, bool isAsked)
    {
        if (old is not { BreakVa: { } had, MakeVa: { } made, MostVolts: { } upTo })
        {
            return isAsked
                ? Finding.Unknown(Side.Site, "coilsVa", $"Coils are wired to it; what they take, and what the old part was rated for, is not known.")
                : Finding.Meets($"No coil is named, and the old part was not marked for pilot duty.");
        }

        if (facet is not { MakeVa: { } make, BreakVa: { } open, MostVolts: { } most }) return Finding.Unknown(Side.Part, "pilotDuty", $"The old part opened {had} VA of coils up to {upTo} V; this one's pilot duty is not known.");
        return Within.AtLeast(open, had) && Within.AtLeast(make, made) && Within.AtLeast(most, upTo)
            ? Finding.Meets($"It opens {open} VA of coils up to {most} V; the old part opened {had} VA up to {upTo} V.")
            : Finding.Unknown(Side.Site, "coilsVa", $"It opens {open} VA of coils up to {most} V, the old part {had} VA up to {upTo} V: whether that is enough is not known without the coils on it.");
    }
}
