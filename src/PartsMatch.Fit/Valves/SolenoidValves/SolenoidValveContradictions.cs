using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Ignition;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.SolenoidValves;

/// <summary>Readings of a solenoid valve and its place that cannot all be true.</summary>
public static class SolenoidValveContradictions
{
    /// <summary>On the plate alone.</summary>
    /// <param name="plate">The plate.</param>
    public static IReadOnlyList<Contradiction> OnPlate(SolenoidValveSpec plate) => [.. Least(plate), .. Direct(plate), .. Frequency(plate), .. Inrush(plate)];

    /// <summary>Between plate and site. What was read at the site is judged by.</summary>
    /// <param name="plate">The old valve's plate.</param>
    /// <param name="site">The site.</param>
    public static IReadOnlyList<Contradiction> WithSite(SolenoidValveSpec plate, SolenoidValveSite site) => [.. Volts(plate, site), .. Current(plate, site), .. Contact(site), .. State(plate, site), .. Listed(plate, site), .. ValveOil.Unlisted(plate.Oils, site.Oil), .. BurningRefrigerant.Understated(site.Hazard, site.Refrigerant), .. Cold(site), .. Warm(site), .. Loads(site)];

    private static IEnumerable<Contradiction> Least(SolenoidValveSpec plate)
    {
        if (plate is { LeastDifferential: { } least, OpeningDifferential: { } most } && least.Value.Kilopascals >= most.Value.Kilopascals)
        {
            yield return new(["leastDifferential", "openingDifferential"], $"It needs {Deducing.Text(least)} to lift and opens against {Deducing.Text(most)} at most: one of the two is misread.", SolenoidValveSources.OpeningDifferential);
        }
    }

    private static IEnumerable<Contradiction> Direct(SolenoidValveSpec plate)
    {
        if (plate is { OpeningDifferential: { } most, DirectDifferential: { } direct } && !Within.AtMost(direct.Value.Kilopascals, most.Value.Kilopascals))
        {
            yield return new(["openingDifferential", "directDifferential"], $"It opens against {Deducing.Text(most)}, and with direct current against {Deducing.Text(direct)}, which lifts less: one of the two is misread.", SolenoidValveSources.OpeningDifferential);
        }
    }

    private static IEnumerable<Contradiction> Frequency(SolenoidValveSpec plate)
    {
        if (plate is { CoilCurrent: CoilCurrent.Direct, CoilFrequency: { } frequency }) yield return new(["coilCurrent", "coilFrequency"], $"Its coil is said to be for direct current and for {Deducing.Text(frequency)}: one of the two is misread.", SolenoidValveSources.CoilFrequency);
    }

    private static IEnumerable<Contradiction> Inrush(SolenoidValveSpec plate)
    {
        if (plate is { CoilPower: { } holds, CoilInrush: { } pulls } && !Within.AtLeast(pulls.Voltamperes, holds.Voltamperes)) yield return new(["coilPower", "coilInrush"], $"Its coil is said to hold by {Deducing.Text(holds)} and to pull in by {Deducing.Text(pulls)}, which is never less: one of the two is misread.", SolenoidValveSources.CoilContact);
    }

    private static IEnumerable<Contradiction> Contact(SolenoidValveSite site)
    {
        if (site is { ContactVa: { } opens, ContactInrushVa: { } closes } && !Within.AtLeast(closes.Voltamperes, opens.Voltamperes)) yield return new([], $"The contact is said to open {Deducing.Text(opens)} and to close on {Deducing.Text(closes)}, which is never less: one of the two is misread.", SolenoidValveSources.CoilContact) { SiteFields = ["contactVa", "contactInrushVa"] };
    }

    private static IEnumerable<Contradiction> Volts(SolenoidValveSpec plate, SolenoidValveSite site)
    {
        if (plate.CoilVolts is not { } taps || Rounded.Volts(site.CoilSupplyVolts) is not { } there) yield break;
        if (taps.Any(tap => CoilOnSupply.FitsVolts(CoilMade.Of(tap, plate.CoilCurrent, plate.CoilFrequency, string.Empty), there, SolenoidCoils.Window))) yield break;
        yield return new(["coilVolts"], FormattableString.Invariant($"The old coil is for {Deducing.Text(taps)}, and {there:0.#} V are there: they killed it or never moved it, or one of the two is misread."), SolenoidValveSources.CoilVolts) { SiteFields = ["coilSupplyVolts"] };
    }

    private static IEnumerable<Contradiction> Current(SolenoidValveSpec plate, SolenoidValveSite site)
    {
        if (plate.CoilCurrent is { } made && site.CoilSupplyCurrent is { } there && made != there) yield return new(["coilCurrent"], $"The old coil is for {Deducing.Text(made)}, and {Deducing.Text(there)} is there: one of the two is misread.", SolenoidValveSources.CoilFrequency) { SiteFields = ["coilSupplyCurrent"] };
    }

    private static IEnumerable<Contradiction> State(SolenoidValveSpec plate, SolenoidValveSite site)
    {
        if (plate.NormalState is { } state && site.NeedsState is { } needed && state != needed) yield return new(["normalState"], $"The old valve was {Deducing.Text(state)}, and a {Deducing.Text(needed)} one is said to be needed: it was the wrong one, or one of the two is misread.", SolenoidValveSources.NormalState) { SiteFields = ["needsState"] };
    }

    private static IEnumerable<Contradiction> Listed(SolenoidValveSpec plate, SolenoidValveSite site)
    {
        if (plate.Refrigerants is { } listed && site.Refrigerant is { } there && !listed.Contains(there)) yield return new(["refrigerants"], $"The old valve lists {Deducing.Text(listed)}, and {there.Name} is there: see what the system was filled with.", ValveSources.Refrigerant) { SiteFields = ["refrigerant"] };
    }

    /// <summary>Gas is no colder than it boils or condenses at.</summary>
    private static IEnumerable<Contradiction> Cold(SolenoidValveSite site)
    {
        var (saturated, field) = site.Line switch
        {
            RefrigerantLine.Suction => (site.EvaporatingAt, "evaporatingAt"),
            RefrigerantLine.HotGas => (site.CondensingAt, "condensingAt"),
            _ => (null, string.Empty),
        };
        if (saturated is not { } dew || site.TemperatureThere is not { } there || Within.AtLeast(there.DegreesCelsius, dew.DegreesCelsius)) yield break;
        yield return new([], $"Gas at {Deducing.Text(there)} cannot be where it is saturated at {Deducing.Text(dew)}: one of the two is misread, or there is liquid in the line.", SolenoidValveSources.Capacity) { SiteFields = ["temperatureThere", field] };
    }

    /// <summary>Liquid reaches a valve subcooled, or not as liquid alone.</summary>
    private static IEnumerable<Contradiction> Warm(SolenoidValveSite site)
    {
        if (site is { Line: RefrigerantLine.Liquid, CondensingAt: { } condensing, TemperatureThere: { } there } && Within.AtLeast(there.DegreesCelsius, condensing.DegreesCelsius))
        {
            yield return new([], $"Liquid at {Deducing.Text(there)} is not subcooled where it condenses at {Deducing.Text(condensing)}: one of the two is misread, or there is gas in the line.", SolenoidValveSources.Capacity) { SiteFields = ["temperatureThere", "condensingAt"] };
        }
    }

    private static IEnumerable<Contradiction> Loads(SolenoidValveSite site)
    {
        if (site is { Load: { } load, LeastLoad: { } least } && !Within.AtMost(least.Watts, load.Watts))
        {
            yield return new([], $"The least load is said to be {Deducing.Text(least)} and the greatest {Deducing.Text(load)}: one of the two is wrong.", SolenoidValveSources.Capacity) { SiteFields = ["load", "leastLoad"] };
        }
    }
}
