using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>What a motor is rated for at one of its speeds below the highest.</summary>
/// <param name="Rpm">Full-load speed in rpm, to 1 rpm; null when unknown.</param>
/// <param name="Watts">Power in W, to 0.1 W, at the shaft or from the line as the plate means it; null when unknown. A plate's only power stands for every speed.</param>
public readonly record struct LowerSpeed(double? Rpm, double? Watts);

/// <summary>A motor's speeds below its highest, row by row as the plate rates them (practice: what stands side by side is paired by position).</summary>
/// <remarks>
/// None where the plate gives one row, says one speed, or its rows are, or may be, one speed at 50 and 60 Hz. Rows of one speed (1075/1075 beside 115/230 V) are one.
/// Two powers beside one speed are high and low (1/3-1/6 hp, 1140 rpm): what low turns at is not known then.
/// </remarks>
public static class LowerSpeeds
{
    /// <summary>They are, fastest first; empty for a motor of one speed.</summary>
    public static Sequence<LowerSpeed> Of(MotorSpec motor) => Spec.Once(motor, static motor => (Sequence<LowerSpeed>)[.. Rows(motor).Select(one => one.Speed)]);

    /// <summary>Those of the old motor.</summary>
    public static Sequence<LowerSpeed> OfOld(MotorNeed need) => Of(need.Plate);

    /// <summary>Their full-load amps, in the same order.</summary>
    public static Sequence<MotorAmps> FullLoadAmps(MotorSpec motor) => [.. Rows(motor).Select(one => MotorAmps.Of(motor, row => row.SpeedRow == one.Row ? row.FullLoadAmps : null))];

    private static IEnumerable<(int Row, LowerSpeed Speed)> Rows(MotorSpec motor)
    {
        if (motor.Speeds == 1 || RatedSpeeds.Of(motor).Count == 1 || HighSpeed.MayBeByFrequency(motor) || RatedSpeeds.AreByFrequency(motor)) return [];
        var hasSpeeds = motor.Speed is { Count: > 1 };
        return RatedSpeeds.Of(motor)
            .Select((rated, row) => (Row: row, Speed: new LowerSpeed(
                hasSpeeds && rated.Speed is { } speed ? Rounded.To(speed.RevolutionsPerMinute, 0) : null,
                rated.Power is { } power ? Rounded.To((double)power.Watts, 1) : null)))
            .OrderByDescending(one => one.Speed.Rpm)
            .ThenByDescending(one => one.Speed.Watts)
            .DistinctBy(one => one.Speed.Rpm ?? one.Speed.Watts)
            .Skip(1);
    }
}
