using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Capacitors;

/// <summary>What is asked for where the old capacitor sat, and does not go with its marking. The motor's plate is judged by; the old one may have been a wrong one, or a reading is.</summary>
public static class MotorAgainstCan
{
    /// <summary>A supply wanders by so much from what a can is marked for (practice).</summary>
    private const double Wander = 1.01;

    private static readonly Func<CapacitorSpec, CapacitorSite, IEnumerable<Contradiction>>[] Rules = [Microfarads, SecondMicrofarads, MarkedVolts, Frequency, Heat, StrapThere];

    /// <summary>All that disagrees.</summary>
    /// <param name="plate">The old capacitor's marking.</param>
    /// <param name="site">The site; what was deduced for it from the marking agrees with it.</param>
    public static IReadOnlyList<Contradiction> Find(CapacitorSpec plate, CapacitorSite site) => [.. Rules.SelectMany(rule => rule(plate, site))];

    private static IEnumerable<Contradiction> Microfarads(CapacitorSpec plate, CapacitorSite site)
    {
        if (plate.Rating is not { IsNone: false } marked || site.MotorAsksFor is not { } asked) yield break;
        if (asked.IsNone)
        {
            yield return new(["rating"], $"The motor's plate asks for no run capacitor, but one of {Deducing.Text(marked)} was fitted: see whether that is the plate of this motor.", CapacitorSources.RunCapacitor) { SiteFields = ["motorAsksFor"] };
        }
        else if (!Has(marked, asked))
        {
            yield return Wrong(marked, asked, "motor", "motorAsksFor");
        }
    }

    private static IEnumerable<Contradiction> SecondMicrofarads(CapacitorSpec plate, CapacitorSite site)
    {
        if (plate.Rating is { SecondSection: not null } marked && site.SecondMotorAsksFor is { IsNone: false } asked && !Has(marked, asked)) yield return Wrong(marked, asked, "second motor", "secondMotorAsksFor");
    }

    private static IEnumerable<Contradiction> MarkedVolts(CapacitorSpec plate, CapacitorSite site)
    {
        if (plate.Rating?.Volts is not { } marked) yield break;
        foreach (var (asked, field) in new[] { (site.MotorAsksFor?.Volts, "motorAsksFor"), (site.SecondMotorAsksFor?.Volts, "secondMotorAsksFor") })
        {
            if (asked is not { } volts || Within.AtLeast(marked.Volts, volts.Volts)) continue;
            yield return new(["rating"], FormattableString.Invariant($"The old capacitor is marked {marked.Volts:0.#} V, the motor asks for {volts.Volts:0.#} V: it was too weak for its motor, or one of the two is misread. What the motor asks for is judged by."), CapacitorSources.CapacitorVolts) { SiteFields = [field] };
            yield break;
        }
    }

    private static IEnumerable<Contradiction> Frequency(CapacitorSpec plate, CapacitorSite site)
    {
        if (plate.Frequency is not { } marked || site.SupplyFrequency is not { } there || marked.Any(one => Within.AtMost(there.Hertz, one.Hertz * Wander))) yield break;
        yield return new(["frequency"], $"The old capacitor is marked {Deducing.Text(marked)}, the supply has {Deducing.Text(there)}: it was not made for it. Check which of the two is true.", CapacitorSources.CapacitorFrequency) { SiteFields = ["supplyFrequency"] };
    }

    private static IEnumerable<Contradiction> Heat(CapacitorSpec plate, CapacitorSite site)
    {
        if (plate.TemperatureMost is not { } most || site.AirMost is not { } air || Within.AtMost(air.DegreesCelsius, most.DegreesCelsius)) yield break;
        yield return new(["temperatureMost"], $"The air there reaches {Deducing.Text(air)}, the old capacitor bore {Deducing.Text(most)}: that heat may have killed it, or one of the two is misread.", CapacitorSources.CapacitorTemperature) { SiteFields = ["airMost"] };
    }

    private static IEnumerable<Contradiction> StrapThere(CapacitorSpec plate, CapacitorSite site)
    {
        if (plate.Can is not { } can || site.StrapHolds is not { } strap || can == strap) yield break;
        yield return new(["can"], $"The old can is {Deducing.Text(can)}, the strap there is said to hold {(strap == CanShape.Oval ? "an oval" : "a round")} one: see which is there.", CapacitorSources.CapacitorCan) { SiteFields = ["strapHolds"] };
    }

    private static Contradiction Wrong(CapacitorRating marked, CapacitorRating asked, string motor, string field) => new(
        ["rating"],
        $"The old capacitor is marked {Deducing.Text(marked)}, the {motor}'s plate asks for {Deducing.Text(asked)}: a wrong one was fitted, or one of the two is misread. What the motor asks for is judged by; read its plate once more.",
        CapacitorSources.RunCapacitor)
    { SiteFields = [field] };

    /// <summary>Whether one of its sections is within the usual tolerance of the µF asked for.</summary>
    internal static bool Has(CapacitorRating marked, CapacitorRating asked) =>
        asked.Capacitance is not { } wanted || new[] { marked.Capacitance, marked.SecondSection }.OfType<ElectricCapacitance>().Any(section => Within.AtMost(Math.Abs(section.Microfarads - wanted.Microfarads) / wanted.Microfarads * 100, MeasuredCapacitor.UsualPercent));
}
