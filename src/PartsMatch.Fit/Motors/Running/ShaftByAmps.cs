using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Running;

/// <summary>Shaft power of a motor as far as volts, amps and type tell it.</summary>
public static class ShaftByAmps
{
    /// <summary>Shaft watts at high speed, to 0.1 W: V·A·√phases times the type's efficiency and power factor; null when volts or amps are unknown.</summary>
    /// <param name="motor">The motor. With its type or phases unknown the band holds all that are possible.</param>
    public static Band? Of(MotorSpec motor) => Spec.Once(motor, WattsOf);

    private static Band? WattsOf(MotorSpec motor)
    {
        var type = TypeBands.Likely(motor);
        var rows = Ratings.Of(motor).Rows.Where(row => row is { Volts: not null, FullLoadAmps: not null }).ToList();
        if (rows.Count == 0) return null;
        var fastest = rows.Max(row => row.Speed?.RevolutionsPerMinute ?? 0);
        Band? all = null;
        foreach (var row in rows.Where(row => (row.Speed?.RevolutionsPerMinute ?? 0).Equals(fastest)))
        {
            var (volts, amps) = (row.Volts!.Value, row.FullLoadAmps!.Value);

            // One figure of amps beside a span is the one at its low end or at its high end: both stay possible.
            double[] products = amps.HasTwoEnds
                ? [volts.First.Volts * amps.First.Amperes, volts.Last.Volts * amps.Last.Amperes]
                : [volts.First.Volts * amps.First.Amperes, volts.Last.Volts * amps.First.Amperes];
            if (products.Min() <= 0) return null;
            var one = new Band(
                MotorInput.ShaftWatts(products.Min(), 1, type.Efficiency, type.PowerFactor, motor.Phase == Phases.Three).Low,
                MotorInput.ShaftWatts(products.Max(), 1, type.Efficiency, type.PowerFactor, motor.Phase != Phases.Single).High);
            all = all is { } before ? before.Shared(one) ?? Band.Around(before.Low, before.High, one.Low, one.High) : one;
        }

        return all is { } band ? TypeBand.Widened(band) is var wide ? new(Rounded.To(wide.Low, 1), Rounded.To(wide.High, 1)) : null : null;
    }

    /// <summary>Shaft watts that a power on the plate and its amps both allow: the power itself, or what the type gives of it where it may be what the motor takes; null where they share nothing.</summary>
    /// <param name="byAmps">Shaft watts as far as amps tell.</param>
    /// <param name="watts">The power on the plate, W.</param>
    /// <param name="meaning">Whether that is at the shaft; null when unknown.</param>
    /// <param name="efficiency">The type's.</param>
    public static Band? And(Band byAmps, double watts, PowerMeaning? meaning, Band efficiency)
    {
        var output = meaning == PowerMeaning.Input ? null : Band.Exactly(watts).Shared(byAmps);
        var input = meaning == PowerMeaning.Output ? null : (efficiency * watts).Shared(byAmps);
        return output is { } given && input is { } taken ? Band.Around(given.Low, given.High, taken.Low, taken.High) : output ?? input;
    }
}
