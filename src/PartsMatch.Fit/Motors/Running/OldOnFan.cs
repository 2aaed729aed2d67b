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

    /// <summary>How many cases there are of both motors.</summary>
    /// <param name="one">The new motor's rated point.</param>
    public int CountWith(RatedPoint one) => Cases.Length * Ends(Rated.ShaftWatts) * Ends(one.ShaftWatts) * Ends(one.Breakdown);

    /// <summary>Adds every case of both motors on the fan.</summary>
    /// <param name="one">The new motor's rated point.</param>
    /// <param name="sheave">By how much changed sheaves slow the fan; 1 where none are.</param>
    /// <param name="diameter">New blade's diameter over the old one's.</param>
    /// <param name="cases">What they are added to.</param>
    public void AddCasesWith(RatedPoint one, double sheave, double diameter, List<FanCase> cases)
    {
        var heavier = Math.Pow(one.Rpm / Rated.Rpm / sheave, 3) * Math.Pow(diameter, 5);
        var moved = Math.Pow(diameter, 3) / sheave;
        for (var oldEnd = 0; oldEnd < Ends(Rated.ShaftWatts); oldEnd++)
        {
            for (var newEnd = 0; newEnd < Ends(one.ShaftWatts); newEnd++)
            {
                for (var end = 0; end < Ends(one.Breakdown); end++) AddCasesWith(one, End(Rated.ShaftWatts, oldEnd), End(one.ShaftWatts, newEnd), End(one.Breakdown, end), heavier, moved, cases);
            }
        }
    }

    private void AddCasesWith(RatedPoint one, double oldRated, double newRated, double breakdown, double heavier, double moved, List<FanCase> cases)
    {
        // The old motor's cases stand by load: those with the same one load the new motor alike.
        var (load, newLoad, newRpm) = (double.NaN, 0.0, 0.0);
        var line = one.LineAt(breakdown);
        foreach (var old in Cases)
        {
            if (!old.Load.Equals(load))
            {
                load = old.Load;
                newLoad = load * oldRated / newRated * heavier;
                newRpm = one.SpeedOn(newLoad, breakdown, line);
            }

            var speed = newRpm / one.Rpm;
            var newShare = newLoad * speed * speed * speed;
            cases.Add(new(
                old.Rpm,
                newRpm,
                old.Share * oldRated,
                newShare * newRated,
                old.Share,
                newShare,
                old.Loading,
                one.Loading(newLoad, newRpm, breakdown, line),
                newRpm / old.Rpm * moved));
        }
    }

    private static int Ends(Band band) => band.IsExact ? 1 : 2;

    private static double End(Band band, int end) => end == 0 ? band.Low : band.High;

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
