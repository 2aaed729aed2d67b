using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Contactors.Proof;

/// <summary>A contactor and what was read at it.</summary>
/// <param name="Need">The old one and its place.</param>
/// <param name="Readings">The readings.</param>
/// <param name="New">The new one; null before the swap.</param>
public sealed record ContactorCase(ContactorNeed Need, ContactorReadings Readings, ContactorSpec? New = null)
{
    /// <summary>Under this share of its least volts a coil has none (practice).</summary>
    private const double NoVoltsShare = 0.1;

    /// <summary>The one the readings were taken at.</summary>
    public ContactorSpec Measured => New ?? Need.Plate;

    /// <summary>The coil that is in it.</summary>
    internal Sequence<CoilMade> Coil => New is null ? ContactorCoils.Own(Need.Plate) : ContactorCoils.Chosen(Need, New);

    /// <summary>Volts at the coil, V; null when not read.</summary>
    internal double? Volts => Readings.CoilVolts?.Legs[0].Volts;

    /// <summary>Whether there are practically none at the coil; null when not read, or when its volts are not known.</summary>
    internal bool? HasNoVolts => Volts is not { } volts ? null : volts <= 0 ? true : Coil.Count == 0 ? null : !Within.AtLeast(volts, NoVoltsShare * Coil.Min(one => one.Low));

    /// <summary>Whether its poles are closed, or should be: as somebody saw, or because current flows, or by its coil, which without a call has no volts unless some were read; null when nothing tells.</summary>
    internal bool? IsIn => IsSeenIn ?? (HasNoVolts == true || (Readings.CircuitCalls == false && Volts is null) ? false : null);

    /// <summary>Whether its poles are closed, as somebody saw, or because current flows; null when neither was read.</summary>
    internal bool? IsSeenIn => Readings switch
    {
        { PullsIn: { } pulls } => pulls,
        { StaysIn: true } => true,
        { LegAmps: { } amps } when amps.Legs.Any(leg => leg.Amperes > 0) => true,
        _ => null,
    };

    /// <summary>Whether its coil is fed as it should be; null when that is not known.</summary>
    internal bool? IsFed => Volts is not { } volts || Coil.Count == 0 ? null : Coil.Any(one => CoilOnSupply.FitsVolts(one, volts, ContactorCoils.Window));

    /// <summary>Full-load amps that a pole carries at the volts that it switches, A; null when not known.</summary>
    internal double? Carries => RatedAmps.Of(Measured.RatedVolts, Measured.AmpsFor(Need.Site.Loads)) is { Count: > 0 } rows
        ? Need.Site.LoadVolts is { } volts ? RatedAmps.At(rows, volts.Volts) : rows.All(row => row.Amps.Equals(rows[0].Amps)) ? rows[0].Amps : null
        : null;
}
