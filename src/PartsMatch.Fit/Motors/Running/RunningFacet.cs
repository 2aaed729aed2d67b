using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.Aspects;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Running;

/// <summary>What decides how a motor runs on a fan.</summary>
/// <param name="Connections">Its taps and phases.</param>
/// <param name="Rpm">Full-load speed at high speed, by frequency; empty when unknown.</param>
/// <param name="Watts">Power at high speed, by frequency; empty when unknown.</param>
/// <param name="Meaning">Whether the power is at the shaft; null when unknown.</param>
/// <param name="Type">How it makes its torque; null when unknown.</param>
/// <param name="HasRunCapacitor">Whether it has a run capacitor; null when unknown.</param>
/// <param name="Poles">Poles at high speed; null when unknown.</param>
/// <param name="Breakdown">Breakdown torque over rated torque, to 0.01; null when unknown.</param>
/// <param name="WattsByAmps">Shaft power as far as amps tell, W; null where the power at the shaft is given, or amps tell nothing.</param>
/// <param name="ServiceFactor">Service factor, to 0.01; null when unknown.</param>
/// <param name="Lower">Its speeds below the highest; empty for a motor of one.</param>
/// <param name="Means">How it has several speeds; null when unknown, or when it has no lower one.</param>
public readonly record struct RunningFacet(
    TapsFacet Connections,
    Sequence<AtFrequency> Rpm,
    Sequence<AtFrequency> Watts,
    PowerMeaning? Meaning,
    MotorType? Type,
    bool? HasRunCapacitor,
    int? Poles,
    double? Breakdown,
    Band? WattsByAmps,
    double? ServiceFactor,
    Sequence<LowerSpeed> Lower,
    SpeedMeans? Means)
{
    /// <summary>What of it tells the power at the shaft, the rest unknown. The type's efficiency and the amps count only where the plate may not give that power itself.</summary>
    public static RunningFacet OfPower(RunningFacet motor)
    {
        RunningFacet power = new() { Watts = motor.Watts, Meaning = motor.Meaning, Lower = motor.Lower, Means = motor.Means, WattsByAmps = motor.Watts.Count == 0 || motor.Meaning != PowerMeaning.Output ? motor.WattsByAmps : null };
        return motor.Meaning == PowerMeaning.Output ? power : power with { Type = motor.Type, HasRunCapacitor = motor.HasRunCapacitor, Connections = new(default, motor.Connections.Phases) };
    }

    /// <summary>What it is for the old motor.</summary>
    public static RunningFacet OfOld(MotorNeed need) => Of(need.Plate);

    /// <summary>What it is for a motor.</summary>
    public static RunningFacet Of(MotorSpec motor) => Spec.Once(motor, Read);

    private static RunningFacet Read(MotorSpec motor)
    {
        var lower = LowerSpeeds.Of(motor);
        return new(
            TapsFacet.Of(motor),
            HighSpeed.Rpm(motor),
            HighSpeed.Watts(motor),
            motor.PowerMeaning,
            motor.Type,
            MotorKinds.HasRunCapacitor(motor),
            motor.Poles,
            motor.BreakdownTorque is { } breakdown ? Rounded.To(breakdown.DecimalFractions, 2) : null,
            motor.Power is null || motor.PowerMeaning != PowerMeaning.Output ? ShaftByAmps.Of(motor) : null,
            motor.ServiceFactor is { } factor ? Rounded.To(factor, 2) : null,
            lower,
            lower.Count > 0 ? motor.SpeedMeans : null);
    }
}
