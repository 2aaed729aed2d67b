using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>Does the contact switch the direct current on it?</summary>
/// <remarks>
/// By its DC amps alone, all loads added up, at the volts that it switches, edges included: a rating for alternating current never stands in for them, and what is not given is open.
/// A motor takes its locked-rotor amps as it starts: beyond the DC amps it is open whether the contact closes on them. Where none are given, six times full load are taken on an automatic control, and else they are asked for.
/// Nothing is asked where nobody said that the current is direct, unless the old contact was marked for nothing else.
/// </remarks>
/// <typeparam name="TSpec">The family's spec.</typeparam>
/// <typeparam name="TSite">The family's site.</typeparam>
public abstract class DirectCurrentAspect<TSpec, TSite>() : ContactAspect<TSpec, TSite, ContactAmpsFacet>(DirectCurrentQuestion.Asked)
    where TSpec : ContactSpec
    where TSite : ContactSite;

/// <summary>The question of one contact.</summary>
internal static class DirectCurrentQuestion
{
    /// <summary>The question.</summary>
    public static ContactQuestion<ContactAmpsFacet> Asked { get; } = new(
        "Direct current",
        ContactSources.DirectCurrent,
        new(0.3, 0.5, 0.8),
        new(["directAmps", "directVolts"], ["loadCurrent", "loadVolts"]) { Besides = ["loads", "motors", "heaterAmps", "heaterPower", "coilsVa", "coilsInrushVa", "fullLoadAmps", "lockedRotorAmps", "resistiveAmps", "pilotDuty"] },
        part => new(RatedAmps.Of(part.DirectVolts, part.DirectAmps)),
        Judge)
    {
        Measure = new("a load", "of its DC amps", 0, 100, "%"),
        IsOfAlternating = false,
    };

    /// <summary>What an answer by a rating for alternating current comes to beside direct current.</summary>
    /// <param name="found">The answer.</param>
    public static Finding Beside(Finding found) => found.Verdict == Verdict.Fails ? found : Finding.Meets($"Direct current is on it, which DC amps answer for, and no others.");

    private static Finding Judge(OnTheContact on, ContactAmpsFacet facet)
    {
        if (!on.IsDirect && !on.AsksForDirect) return Finding.Meets($"Nothing says that direct current is on it.");
        if (RatedAmps.MostAmps(facet.Rows) is not { } most) return Finding.Unknown(Side.Part, "directAmps", $"Direct current is on it, or may be; its DC amps are not known, and no others stand in for them.");
        return on.IsDirect && LoadsOn(on) is { Count: > 0 } loads ? AgainstLoad(on, loads, facet, most) : AgainstOld(on, facet);
    }

    /// <summary>What is known of the loads may already be too much; only what is not is asked for.</summary>
    private static Finding AgainstLoad(OnTheContact on, IReadOnlyList<DirectLoad> loads, ContactAmpsFacet facet, double most)
    {
        var amps = Rounded.To(loads.Sum(load => load.Amps ?? 0), 2);
        if (!Within.AtMost(amps, most)) return Finding.Fails(new Margin(most - amps, "A"), $"{amps} A of direct current are on it; it switches {most} A of it at most, whatever the volts.");
        if (RatedAmps.MostVolts(facet.Rows) is not { } mostVolts) return Finding.Unknown(Side.Part, "directVolts", $"{amps} A of direct current are on it; it switches {most} A of it, at which volts is not known.");
        var volts = loads.Max(load => load.Volts.Figure) ?? 0;
        if (RatedAmps.At(facet.Rows, volts) is not { } carries) return Finding.Fails(new Margin(mostVolts - volts, "V"), $"It is rated up to {mostVolts} V of direct current; it is to switch {volts} V.");
        var margin = new Margin(carries - amps, "A");
        if (!Within.AtMost(amps, carries)) return Finding.Fails(margin, $"It switches {carries} A of direct current at {volts} V; {amps} A are on it.");
        if (loads.FirstOrDefault(load => load.Amps is null) is { Field: { } lacks }) return Finding.Unknown(Side.Site, lacks, $"The amps of all that takes direct current on it are not known.");
        if (loads.FirstOrDefault(load => load.Volts.Figure is null) is { Volts.Field: { } unread }) return Finding.Unknown(Side.Site, unread, $"{amps} A of direct current are on it; at which volts is not known.");
        if (on.HasMotor == true && on.LockedRotor is null) return Finding.Unknown(Side.Site, "motors", $"It switches {carries} A of direct current at {volts} V; what the motors on it take as they start, their locked-rotor amps, is not known.");
        var starting = Rounded.To(loads.Sum(load => load.Starting ?? load.Amps ?? 0), 2);
        if (Within.AtMost(starting, carries)) return Meets(amps, volts, carries, margin);
        return on.IsLockedRotorGiven
            ? Finding.Unknown(Side.Part, "directAmps", $"It switches {carries} A of direct current at {volts} V; {starting} A are on it as the motors start, and whether it closes on them is not known.")
            : Finding.Unknown(Side.Site, "motors", $"It switches {carries} A of direct current at {volts} V; with six times the motors' full-load amps {starting} A would be on it as they start: their own locked-rotor amps are not known.");
    }

    private static Finding Meets(double amps, double volts, double carries, Margin margin) =>
        Finding.Meets($"It switches {carries} A of direct current at {volts} V; {amps} A are on it.") with { Margin = margin, Shortfall = amps / carries };

    private static Finding AgainstOld(OnTheContact on, ContactAmpsFacet facet)
    {
        var asked = on.IsDirect ? "loads" : "loadCurrent";
        if (on.OldDirect.Count == 0) return Finding.Unknown(Side.Site, asked, $"What takes direct current on it is not known.");
        foreach (var row in on.OldDirect.AsSpan())
        {
            if (row.Volts is not { } volts) return Finding.Unknown(Side.Plate, "directVolts", $"At how many volts of direct current the old one switched its {row.Amps} A is not known.");
            if (RatedAmps.At(facet.Rows, volts) is not { } carries || !Within.AtMost(row.Amps, carries)) return Finding.Unknown(Side.Site, asked, $"The old one switched {row.Amps} A of direct current at {volts} V, and this one is not known to: whether that is enough is not known without what is on it.");
        }

        return Finding.Meets($"It switches the direct current that the old one was rated for.");
    }

    private static List<DirectLoad> LoadsOn(OnTheContact on)
    {
        List<DirectLoad> loads = [];
        if (on.HasMotor == true) loads.Add(new("motors", on.FullLoad, on.At(ContactLoad.Motor)) { Starting = on.LockedRotor });
        if (on.Has(ContactLoad.Heater) == true) loads.Add(new("heaterAmps", on.Heater, on.At(ContactLoad.Heater)));
        if (on.Has(ContactLoad.Coil) == true) loads.Add(OfCoils(on, on.At(ContactLoad.Coil)));
        return loads;
    }

    /// <summary>What coils hold by is watts of direct current: amps are VA over volts.</summary>
    private static DirectLoad OfCoils(OnTheContact on, SwitchedVolts at) => on.CoilsVa is null ? new("coilsVa", null, at) : new(at.Field, on.CoilsVa / at.Figure, at);

    /// <summary>Direct current on a contact.</summary>
    /// <param name="Field">The site's field that its amps are missing from, where they are.</param>
    /// <param name="Amps">Its amps, A; null when not known.</param>
    /// <param name="Volts">Its volts.</param>
    private sealed record DirectLoad(string Field, double? Amps, SwitchedVolts Volts)
    {
        /// <summary>Its amps as it starts, A; null where they are no others.</summary>
        public double? Starting { get; init; }
    }
}
