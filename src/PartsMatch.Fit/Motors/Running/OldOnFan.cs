using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Running;

/// <summary>The old motor on its fan, at one of its possible rated points: the same whatever the new motor is.</summary>
/// <param name="Rated">The rated point.</param>
/// <param name="Fan">How heavy the fan is.</param>
/// <param name="Cases">Every combination of the bands' ends, the lightest load first; at least one.</param>
internal sealed record OldOnFan(RatedPoint Rated, FanOnShaft Fan, OldCase[] Cases)
{
    /// <summary>At each of its possible rated points, at least one, or the name of the field that is missing.</summary>
    public static (OldOnFan[] Olds, string? MissingField) Possible(MotorNeed need) => need.Once(static need =>
    {
        var (points, lacks) = RatedPoint.Possible(RunningFacet.OfOld(need), need);
        return ((OldOnFan[])[.. points.Select(point => At(point, FanOnShaft.Of(need, point)))], lacks);
    });

    /// <summary>On each of its lower speeds, by their places among <see cref="LowerSpeeds"/>; none where a rating is not known there. The fan is as heavy as on high speed.</summary>
    /// <param name="need">One of which the rated points are possible.</param>
    public static OldOnFan[][] OnLower(MotorNeed need) => need.Once(static need =>
        (OldOnFan[][])[.. LowerSpeeds.OfOld(need).Select(lower => OnLower(need, Possible(need).Olds[0], lower))]);

    private static OldOnFan[] OnLower(MotorNeed need, OldOnFan high, LowerSpeed lower)
    {
        var points = high.Rated.OnLower(RunningFacet.OfOld(need), lower, SupplyVolts.HertzOf(need));
        if (points.Count == 0) return [];
        var (before, now) = (high.Rated, points[0]);
        var onHigh = Band.Around([.. high.Cases.Select(one => one.Load)]);
        var powers = Band.Around(before.ShaftWatts.Low / now.ShaftWatts.Low, before.ShaftWatts.High / now.ShaftWatts.High);
        var onLower = onHigh * powers * Math.Pow(now.Rpm / before.Rpm, 3);
        var fan = high.Fan with { LoadAt = _ => onLower };
        return [.. points.Select(point => At(point, fan))];
    }

    private static OldOnFan At(RatedPoint rated, FanOnShaft fan) => new(rated, fan,
    [
        .. from breakdown in rated.Breakdown.Ends
           from load in fan.LoadAt(breakdown).Ends
           orderby load
           let rpm = rated.SpeedOn(load, breakdown)
           select new OldCase(load, rpm, load * Math.Pow(rpm / rated.Rpm, 3), rated.Loading(load, rpm, breakdown)),
    ]);
}

/// <summary>The old motor on the fan for one value of everything that is only known as a band.</summary>
/// <param name="Load">The fan's torque at the motor's rated speed over its rated torque.</param>
/// <param name="Rpm">Its speed, rpm.</param>
/// <param name="Share">Its shaft power over its rated power.</param>
/// <param name="Loading">How hard it is worked: 1 at its rated point.</param>
internal readonly record struct OldCase(double Load, double Rpm, double Share, double Loading);
