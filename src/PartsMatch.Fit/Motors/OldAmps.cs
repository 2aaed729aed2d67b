using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>The full-load amps of the old motor, and how a new one's compare with them.</summary>
public static class OldAmps
{
    /// <summary>So many times the old amps are the same (practice: two digits on a plate are rounded by as much).</summary>
    public const double Same = 1.05;

    /// <summary>Conductors are laid for 125 % of the full-load amps (NFPA 70 430.22): so much more uses all of it up.</summary>
    private const double WireReserve = 0.25;

    /// <summary>What the old motor's plate gives, or else the equipment's own plate, in A; null when neither is known.</summary>
    /// <param name="need">Plate and site.</param>
    /// <param name="candidate">The candidate's taps.</param>
    public static double? Of(MotorNeed need, Sequence<VoltTap> candidate) => Of(MotorAmps.FullLoad(need.Plate), need, candidate) ?? need.Site.EquipmentFanAmps?.Amperes;

    /// <summary>Any amps of the old motor; null when unknown.</summary>
    /// <param name="amps">The old motor's.</param>
    /// <param name="need">Plate and site.</param>
    /// <param name="candidate">The candidate's taps.</param>
    public static double? Of(MotorAmps amps, MotorNeed need, Sequence<VoltTap> candidate) =>
        amps.Rows.Count == 0 ? null : AmpsThere.Of(amps, need, need.Plate.Phase ?? Phases.Single, candidate).Most;

    /// <summary>Whether a motor takes no more than the old one.</summary>
    public static bool IsNoMore(double amps, double old) => Within.AtMost(amps, old * Same);

    /// <summary>0 up to the old amps, 1 at a quarter more, and never over 1: no limit is passed.</summary>
    public static double Shortfall(double amps, double old) => Math.Clamp(((amps / old) - 1) / WireReserve, 0, 1);
}
