using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Running;

/// <summary>Shaft power of a motor as far as volts, amps and type tell it.</summary>
public static class ShaftByAmps
{
    /// <summary>The types' bands are of common motors and mostly from memory: so far beyond them a motor may still lie.</summary>
    private const double BeyondBand = 0.1;

    /// <summary>Shaft watts at high speed, to 0.1 W: V·A·√phases times the type's efficiency and power factor; null when volts or amps are unknown.</summary>
    /// <param name="motor">The motor. With its type or phases unknown the band holds all that are possible.</param>
    public static Band? Of(MotorSpec motor)
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

        return all is { } band ? new(Rounded.To(band.Low * (1 - BeyondBand), 1), Rounded.To(band.High * (1 + BeyondBand), 1)) : null;
    }
}
