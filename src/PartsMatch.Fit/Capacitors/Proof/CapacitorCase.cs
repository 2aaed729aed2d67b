using PartsMatch.Fit.Judging;
using UnitsNet;

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
    internal double? Hertz => (Need.Site.SupplyFrequency ?? (Need.Plate.Frequency is { Count: 1 } one ? one[0] : (Frequency?)null))?.Hertz;

    /// <summary>The first section's readings.</summary>
    internal MeasuredCapacitor First => new(Readings.Microfarads, Readings.AcrossVolts, Readings.LeadAmps);

    /// <summary>The second section's readings.</summary>
    internal MeasuredCapacitor Second => new(Readings.SecondMicrofarads, Readings.SecondAcrossVolts, Readings.SecondLeadAmps);
}
