using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the speed aspect reads.</summary>
/// <param name="Rpm">Full-load speed at high speed, by frequency; empty when unknown.</param>
/// <param name="Speeds">How many speeds; null when unknown.</param>
/// <param name="Means">How it has several.</param>
/// <param name="Lower">Its lower speeds, without their powers; empty for a motor of one.</param>
/// <param name="InductionPoles">Poles at high speed of an induction motor; null when unknown or of another kind.</param>
public readonly record struct SpeedFacet(Sequence<AtFrequency> Rpm, int? Speeds, SpeedMeans? Means, Sequence<LowerSpeed> Lower, int? InductionPoles)
{
    /// <summary>What they are for the old motor.</summary>
    public static SpeedFacet OfOld(MotorNeed need) => Of(need.Plate);

    /// <summary>What they are for a motor.</summary>
    public static SpeedFacet Of(MotorSpec motor) => Spec.Once(motor, static motor => new SpeedFacet(
        HighSpeed.Rpm(motor), motor.Speeds, motor.SpeedMeans, [.. LowerSpeeds.Of(motor).Select(lower => lower with { Watts = null })], motor.Type is not null && MotorKinds.IsInduction(motor) ? motor.Poles : null));
}

/// <summary>Does the fan keep its speed, and has the motor as many speeds as are used?</summary>
/// <remarks>
/// High speed against high speed, at the site's frequency, and each lower speed in use against the one that serves it: within 5 % is the same (practice), within 2 % nobody would give it a thought, since motors of one plate
/// differ by as much (MG 1 12.46 allows 20 % of the slip, 25 rpm at 1075: from memory). Lower speeds of a tapped winding are high-slip taps of the same poles: beyond the limit they are checked, not refused.
/// A belt's sheaves or a new blade can make up for another speed.
/// </remarks>
public sealed class Speed() : Aspect<MotorSpec, MotorSite, SpeedFacet>("Speed", isDeciding: true, MotorSources.SameSpeed, new(1.5, 0.6, 1.2))
{
    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a speed", "off the old one's", 100 * HighSpeedMatch.Easy, 100 * HighSpeedMatch.Same, "%");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["speed", "speeds", "poles"], ["supplyFrequency", "speedsUsed"]) { Besides = ["frequency", "power", "type", "speedMeans", "bladeStays", "drive"] };

    /// <inheritdoc/>
    public override SpeedFacet Read(MotorSpec part) => SpeedFacet.Of(part);

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, SpeedFacet facet)
    {
        if (need.Site.SpeedsUsed is { } used && facet.Speeds < used) return Finding.Fails($"{used} speeds are used, and the motor has {facet.Speeds}: it serves only where the controls use no more.");
        var all = EverySpeed.Of(HighSpeedMatch.Judge(need, facet, SpeedCount.Changes(need, facet)), LowerSpeedMatch.Judge(need, facet));
        return all.Verdict is Verdict.Fails or Verdict.Unknown ? all : SpeedCount.Missing(need, facet) ?? all;
    }
}
