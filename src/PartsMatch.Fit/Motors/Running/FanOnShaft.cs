using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Running;

/// <summary>How heavy the old fan is on the old motor: its torque at the motor's rated speed over the rated torque.</summary>
/// <param name="From">What that rests on, in words.</param>
/// <param name="IsMeasured">Whether it was narrowed by something measured.</param>
/// <param name="LoadAt">The load's band for one value of the old motor's breakdown torque.</param>
public sealed record FanOnShaft(string From, bool IsMeasured, Func<double, Band> LoadAt)
{
    /// <summary>Fans are chosen to load their motor to 70 to 100 % of its plate (practice).</summary>
    public static Band Usual { get; } = new(0.7, 1);

    /// <summary>How heavy it is by what was measured on the old fan or a sister fan: speed first, then power, then amps; else the usual band.</summary>
    public static FanOnShaft Of(MotorNeed need, RatedPoint old)
    {
        var site = need.Site;
        if (site.MeasuredSpeed?.RevolutionsPerMinute is { } rpm && old.LoadAt(rpm, old.Breakdown.Low) is not null && old.LoadAt(rpm, old.Breakdown.High) is not null)
        {
            return new(FormattableString.Invariant($"{rpm:0} rpm measured"), true, breakdown => Band.Exactly(old.LoadAt(rpm, breakdown)!.Value));
        }

        var type = TypeBands.Likely(need.Plate);
        if ((double?)site.MeasuredInput?.Watts is { } input and > 0)
        {
            var efficiency = need.Plate.Efficiency is { } known ? Band.Exactly(known.DecimalFractions) : type.PossibleEfficiency;
            return new(FormattableString.Invariant($"{input:0} W measured, at {efficiency.ToString("0.##")} efficiency"), true, breakdown => LoadOf(old, efficiency * input, breakdown));
        }

        return site.MeasuredAmps?.Amperes is { } amps and > 0 && AmpsWatts(need, old, amps, type) is { } byAmps
            ? new(FormattableString.Invariant($"{amps:0.##} A measured"), true, breakdown => Narrowed(LoadOf(old, byAmps, breakdown)))
            : new("70 to 100 % of the old motor's plate (practice)", false, _ => Usual);
    }

    /// <summary>The load on which the motor gives so much power: the power grows with the load until the motor stalls.</summary>
    private static Band LoadOf(RatedPoint old, Band shaftWatts, double breakdown)
    {
        double Solve(double watts, double rated)
        {
            var (low, high) = (0.01, 3.0);
            for (var halving = 0; halving < 50; halving++)
            {
                var load = (low + high) / 2;
                if (load * rated * Math.Pow(old.SpeedOn(load, breakdown) / old.Rpm, 3) < watts) low = load;
                else high = load;
            }

            return (low + high) / 2;
        }

        return new(Solve(shaftWatts.Low, old.ShaftWatts.High), Solve(shaftWatts.High, old.ShaftWatts.Low));
    }

    /// <summary>What amps allow of the usual band; amps over the plate's stretch it upwards, and where they share nothing with it they stand alone.</summary>
    private static Band Narrowed(Band byAmps) => byAmps.Shared(Usual) is { } shared ? new(shared.Low, Math.Max(shared.High, byAmps.High > Usual.High ? byAmps.High : 0)) : byAmps;

    /// <summary>
    /// Amps bound the power from above: the rated power times amps over the plate's, times volts over the plate's (US DOE, Determining Electric Motor Load and
    /// Efficiency; from memory); an unloaded motor takes amps too, so that it is never more. From below they do by the type's efficiency and power factor.
    /// </summary>
    private static Band? AmpsWatts(MotorNeed need, RatedPoint old, double amps, TypeBand type)
    {
        var row = Ratings.Of(need.Plate).Rows.Where(one => one.FullLoadAmps is not null && (old.Tap is null || one.Volts is null || VoltTap.Of(one.Volts.Value) == old.Tap))
            .MinBy(one => Math.Abs((one.Speed?.RevolutionsPerMinute ?? old.Rpm) - old.Rpm));
        if (row?.FullLoadAmps is not { } plate || old.Tap is not { } tap) return null;
        var most = amps / plate.First.Amperes * old.VoltsRatio * old.ShaftWatts.High;
        var least = MotorInput.ShaftWatts(tap.High * old.VoltsRatio, amps, type.Efficiency, type.PowerFactor, need.Plate.Phase == Phases.Three).Low;
        return new Band(Math.Min(least, most), most);
    }
}
