using PartsMatch.Fit.Capacitors.Aspects;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Capacitors.Proof;

/// <summary>A run capacitor and what was read at it.</summary>
/// <param name="Need">The old one and its place.</param>
/// <param name="Readings">The readings.</param>
/// <param name="New">The new one; null before the swap.</param>
public sealed record CapacitorCase(CapacitorNeed Need, CapacitorReadings Readings, CapacitorSpec? New = null)
{
    /// <summary>The one the readings were taken at.</summary>
    public CapacitorSpec Measured => New ?? Need.Plate;

    /// <summary>µF that the first section is measured against: an old one against its own marking, a new one against what the motor asks for; null when neither is known.</summary>
    internal double? FirstAsked => New is null ? (Need.Plate.Rating ?? Need.Site.MotorAsksFor)?.Capacitance?.Microfarads : Asked.Of(Need).First;

    /// <summary>The same for the second section.</summary>
    internal double? SecondAsked => New is null ? Need.Plate.Rating?.SecondSection?.Microfarads ?? Need.Site.SecondMotorAsksFor?.Capacitance?.Microfarads : Asked.Of(Need).Second;

    /// <summary>Tolerance either way, percent: the marked one of an old capacitor; for a new one no wider than the usual.</summary>
    internal double Percent => New is null ? Need.Plate.Tolerance?.Percent ?? MeasuredCapacitor.UsualPercent : Math.Min(Need.Plate.Tolerance?.Percent ?? MeasuredCapacitor.UsualPercent, MeasuredCapacitor.UsualPercent);

    /// <summary>The supply's frequency, Hz; null when not known.</summary>
    internal double? Hertz => (Need.Site.SupplyFrequency ?? (Need.Plate.Frequency is { Count: 1 } one ? one[0] : (UnitsNet.Frequency?)null))?.Hertz;

    /// <summary>µF of the section that is left unused, where a new one has two and one motor is served; null otherwise.</summary>
    internal double? Unused => New is { Rating.SecondSection: not null } && SecondAsked is null && SectionsFacet.Of(New) is var facet && Capacitance.Pair(Asked.Of(Need), facet).ForFirst is { } used
        ? facet.First == used ? facet.Second : facet.First
        : null;

    /// <summary>The first section's readings.</summary>
    internal SectionRead First => AreCrossed ? InSecondFields : InFirstFields;

    /// <summary>The second section's readings.</summary>
    internal SectionRead Second => AreCrossed ? InFirstFields : InSecondFields;

    /// <summary>Whether the readings stand in the fields the other way round: neither goes with its own section, and one goes with the other's. The same can is written in either order.</summary>
    internal bool AreCrossed =>
        FirstAsked is { } first && (SecondAsked ?? Unused) is { } second
        && !Has(InFirstFields, first) && !Has(InSecondFields, second) && (Has(InFirstFields, second) || Has(InSecondFields, first));

    private SectionRead InFirstFields => new(new(Readings.Microfarads, Readings.AcrossVolts, Readings.LeadAmps), IsInSecondFields: false);

    private SectionRead InSecondFields => new(new(Readings.SecondMicrofarads, Readings.SecondAcrossVolts, Readings.SecondLeadAmps), IsInSecondFields: true);

    private bool Has(SectionRead read, double asked) => read.Readings.Microfarads(Hertz) is { } microfarads && Within.AtMost(Math.Abs(microfarads - asked) / asked * 100, Percent);
}

/// <summary>What was read at one section.</summary>
/// <param name="Readings">The readings.</param>
/// <param name="IsInSecondFields">Whether they were given as the second section's.</param>
internal readonly record struct SectionRead(MeasuredCapacitor Readings, bool IsInSecondFields);
