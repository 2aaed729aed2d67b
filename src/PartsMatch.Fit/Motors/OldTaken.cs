using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors;

/// <summary>Amps on the old motor's plate, and what it took of them: worked out once a need where its volts were measured, since a candidate has no say in it then.</summary>
/// <param name="Amps">By tap and frequency; no rows when unknown.</param>
/// <param name="Measured">What it took at the volts measured; null where none were.</param>
internal sealed record OldTaken(MotorAmps Amps, AmpsThere? Measured)
{
    /// <summary>Of any amps of its plate.</summary>
    public static OldTaken Of(MotorNeed need, MotorAmps amps) =>
        new(amps, amps.Rows.Count > 0 && SupplyVolts.Of(need, PhasesOf(need)).LinesMeasured ? AmpsThere.Of(amps, need, PhasesOf(need), candidate: default) : null);

    /// <summary>What it took, beside a candidate: with no volts measured, on those of its taps that the candidate has as well.</summary>
    public AmpsThere At(MotorNeed need, Sequence<VoltTap> candidate) => Measured ?? AmpsThere.Of(Amps, need, PhasesOf(need), candidate);

    private static Phases PhasesOf(MotorNeed need) => need.Plate.Phase ?? Phases.Single;
}
