using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>An old motor and what was read at it, with the plain figures and states that several rules take from them. A state is null where the readings do not tell.</summary>
/// <param name="Need">Plate and site.</param>
/// <param name="Readings">The readings.</param>
public sealed record MotorCase(MotorNeed Need, MotorReadings Readings)
{
    /// <summary>Stray volts on an open circuit stay under this share of the tap (practice).</summary>
    private const double NoVoltsShare = 0.1;

    /// <summary>The same where the plate's volts are not known, V (practice).</summary>
    private const double NoVolts = 5;

    /// <summary>What a clamp meter shows beside other leads stays under this share of full-load amps (practice).</summary>
    private const double NoAmpsShare = 0.05;

    /// <summary>The same where they are not known, A (practice).</summary>
    private const double NoAmpsAtAll = 0.05;

    private const int AllLegs = 3;

    /// <summary>From this share of its marked locked-rotor amps on it stands still (practice).</summary>
    private const double LockedShare = 0.8;

    /// <summary>The taps it is connected for, or all of them.</summary>
    public Sequence<VoltTap> Taps { get; } = VoltTap.Of(Need.Plate.ConnectedFor ?? Need.Plate.Voltage);

    /// <summary>Volts at its leads, one a leg; empty when not read. The site's are of the same leads.</summary>
    public IReadOnlyList<double> Volts { get; } = Legs(Readings.LeadVolts?.Legs ?? Need.Site.Volts);

    /// <summary>Amps of its lines; empty when not read.</summary>
    public IReadOnlyList<double> Amps { get; } = [.. Readings.MotorAmps?.Legs.Select(amps => amps.Amperes) ?? []];

    /// <summary>Whether it is a three-phase motor: by its plate; where that is silent, three lines with amps of their own tell.</summary>
    public bool? IsThreePhase { get; } =
        (Need.Plate.Phase ?? MotorKinds.PhasesOf(Need.Plate.Type)) is { } phases ? phases == Phases.Three : Readings.MotorAmps?.Legs.Count == AllLegs ? true : null;

    /// <summary>Whether it has electronics of its own.</summary>
    public bool IsElectronic => Need.Plate.Type == MotorType.ElectronicallyCommutated;

    /// <summary>Whether there are volts at its leads.</summary>
    public bool? HasVolts => Volts.Count == 0 ? null : Within.AtLeast(Volts.Max(), Taps.Count == 0 ? NoVolts : Taps.Min(tap => tap.Low) * NoVoltsShare);

    /// <summary>The rows of its plate that it is on: amps of another tap say nothing of this one. Beside a lost leg the whole ones tell the tap.</summary>
    public IReadOnlyList<Rating> Rows => RowsThere.Of(Need.Plate, HasLostLeg ? Volts.Max() : HasVolts == true ? Volts.Average() : null, Need.Site.SupplyFrequency?.Hertz);

    /// <summary>Greatest full-load amps of these rows; null when not known.</summary>
    public double? FullLoadAmps => Rows.Max(row => Greatest(row.FullLoadAmps));

    /// <summary>Greatest locked-rotor amps of these rows; null when not known.</summary>
    public double? LockedRotorAmps => Rows.Max(row => Greatest(row.LockedRotorAmps));

    /// <summary>Whether it takes no current; a leg with some is enough to say it does.</summary>
    public bool? TakesNoCurrent => Amps.Count == 0 ? null : !Within.AtLeast(Amps.Max(), SomeAmps);

    /// <summary>Whether one line of a three-phase motor takes no current while another does: it runs, or hums, on two.</summary>
    public bool HasLegWithoutCurrent =>
        IsThreePhase == true && Amps.Count == AllLegs && TakesNoCurrent == false && !Within.AtLeast(Amps.Min(), SomeAmps);

    /// <summary>Whether the volts of the three legs lie so far apart that one of them is lost, not only unlike.</summary>
    public bool HasLostLeg => HasVolts == true && Volts.Count == AllLegs && SupplyBalance.IsLost(Volts);

    /// <summary>Whether it stands still with current in it.</summary>
    public bool? IsStalled =>
        Readings.Turns == true ? false
        : Readings.Hums == true || (Readings.Turns == false && TakesNoCurrent == false) || Amps.Any(amps => Within.AtLeast(amps, LockedRotorAmps * LockedShare ?? double.PositiveInfinity)) ? true
        : null;

    /// <summary>Whether a protector inside may have opened by itself: not where the plate says there is none, or that the winding's impedance protects it.</summary>
    public bool MayHaveProtector => Need.Plate.Protection is not (Protection.None or Protection.Impedance);

    /// <summary>Whether it has a run capacitor; null when neither plate nor type tells.</summary>
    public bool? HasCapacitor =>
        Need.Plate.RunCapacitor is { } marked ? !marked.IsNone
        : IsThreePhase == true ? false
        : Need.Plate.Type switch
        {
            MotorType.PermanentSplitCapacitor or MotorType.CapacitorStartCapacitorRun => true,
            null => null,
            _ => false,
        };

    /// <summary>From so many amps on it takes current: by the row with the least.</summary>
    private double SomeAmps => Rows.Min(row => Least(row.FullLoadAmps)) * NoAmpsShare ?? NoAmpsAtAll;

    private static IReadOnlyList<double> Legs(Figures<ElectricPotential>? legs) => [.. legs?.Select(volts => volts.Volts) ?? []];

    private static double? Greatest(Spread<ElectricCurrent>? amps) => amps is { } ends ? Math.Max(ends.First.Amperes, ends.Last.Amperes) : null;

    private static double? Least(Spread<ElectricCurrent>? amps) => amps is { } ends ? Math.Min(ends.First.Amperes, ends.Last.Amperes) : null;
}
