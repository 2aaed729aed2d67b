using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>The amps of the old motor, and how a new one's compare with them.</summary>
/// <remarks>
/// Wire, fuse and contact carry amps, whatever the volts: what the old motor took is the measure. Where it took them at far fewer volts, they were another circuit's, or another tap's:
/// then what the same power takes at the new motor's volts is the measure, which is less (arithmetic).
/// </remarks>
/// <param name="Amps">What a new motor's amps are held against, A.</param>
/// <param name="Took">What the old motor took, A.</param>
/// <param name="TookAt">The volts at which it took them, where they are far fewer than the new motor's; else null.</param>
/// <param name="Volts">The new motor's volts; null when unknown.</param>
public readonly record struct OldAmps(double Amps, double Took, double? TookAt, double? Volts)
{
    /// <summary>So many times the old amps are the same (practice: two digits on a plate are rounded by as much).</summary>
    public const double Same = 1.05;

    /// <summary>Volts that differ by no more are one supply's: 208-230 V, and a quarter at most (as two figures of a span).</summary>
    private const double SameSupply = 1.25;

    /// <summary>Conductors are laid for 125 % of the full-load amps (NFPA 70 430.22): so much more uses all of it up.</summary>
    private const double WireReserve = 0.25;

    /// <summary>What a shortfall is in amps.</summary>
    public static OwnMeasure Measure { get; } = new("one", "over the old motor's", 0, 100 * WireReserve, "%");

    /// <summary>What the old motor's plate gives, or else the equipment's own plate; null when neither is known.</summary>
    /// <param name="need">Plate and site.</param>
    /// <param name="candidate">The candidate's taps.</param>
    /// <param name="now">The candidate's amps.</param>
    public static OldAmps? Of(MotorNeed need, Sequence<VoltTap> candidate, AmpsThere now) => Of(need.Once(static need => OldTaken.Of(need, need.OnceOfPlate(MotorAmps.FullLoad))), need, candidate, now) ?? OfEquipment(need);

    /// <summary>Any amps of the old motor; null when unknown.</summary>
    /// <param name="taken">The old motor's.</param>
    /// <param name="need">Plate and site.</param>
    /// <param name="candidate">The candidate's taps.</param>
    /// <param name="now">The candidate's amps.</param>
    internal static OldAmps? Of(OldTaken taken, MotorNeed need, Sequence<VoltTap> candidate, AmpsThere now)
    {
        if (taken.Amps.Rows.Count == 0) return null;
        var old = taken.At(need, candidate);
        return old.Volts is { } at && now.Volts is { } volts && !Within.AtMost(volts, at * SameSupply)
            ? new(Rounded.To(old.Most * at / volts, 3), old.Most, at, volts)
            : new(old.Most, old.Most, null, now.Volts);
    }

    /// <summary>What the equipment's own plate gives; its volts are the equipment's.</summary>
    /// <param name="need">Plate and site.</param>
    public static OldAmps? OfEquipment(MotorNeed need) => need.Once(static need => need.Site.EquipmentFanAmps?.Amperes is { } amps ? new OldAmps(amps, amps, null, null) : (OldAmps?)null);

    /// <summary>Whether a motor takes no more than the old one.</summary>
    public bool IsNotExceededBy(double amps) => Within.AtMost(amps, Amps * Same);

    /// <summary>Whether the old motor itself took no more than a new one.</summary>
    public bool TookNoMoreThan(double amps) => Within.AtMost(Took, amps * Same);

    /// <summary>0 up to the old amps, 1 at a quarter more, and never over 1: no limit is passed.</summary>
    public double Shortfall(double amps) => Math.Clamp(((amps / Amps) - 1) / WireReserve, 0, 1);

    /// <inheritdoc/>
    public override string ToString() => TookAt is { } at
        ? FormattableString.Invariant($"{Took:0.##} A at {at:0.#} V, as much as {Amps:0.##} A at {Volts:0.#} V")
        : FormattableString.Invariant($"{Amps:0.##} A");
}
