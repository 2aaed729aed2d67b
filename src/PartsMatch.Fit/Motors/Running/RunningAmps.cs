using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Running;

/// <summary>Amps that a motor takes at a load, as far as its plate, or its type, tells.</summary>
public static class RunningAmps
{
    /// <summary>What the estimate rests on.</summary>
    public const string Assumption = "amps lie between what the load would take at the type's best efficiency and power factor, and the plate's amps for the load that it is rated for";

    /// <summary>Amps at a band of shaft powers; null when volts or type tell nothing.</summary>
    /// <param name="motor">The motor.</param>
    /// <param name="at">Its rated point at the site.</param>
    /// <param name="shaftWatts">Shaft power, W.</param>
    public static Band? Of(MotorSpec motor, RatedPoint at, Band shaftWatts)
    {
        if (at.Tap is not { } tap) return null;
        var type = TypeBands.Likely(motor);
        var voltAmps = MotorInput.VoltAmps(tap.High * at.VoltsRatio, 1, motor.Phase == Phases.Three);
        var byType = shaftWatts / type.ShaftShare * (1 / voltAmps);
        if (PlateAmps(motor, tap, at.Rpm) is not { } plate) return byType;

        // Up to its rating a motor takes at most its plate's amps, and beyond in proportion; off the plate's volts it takes more either way:
        // lower volts for the same power, higher ones for its magnetisation.
        var most = plate * Math.Max(1, shaftWatts.High / at.ShaftWatts.Low) * Math.Max(at.VoltsRatio, 1 / at.VoltsRatio);
        return new(Math.Min(byType.Low, most), most);
    }

    private static double? PlateAmps(MotorSpec motor, VoltTap tap, double rpm)
    {
        var row = Ratings.Of(motor).Rows.Where(one => one.FullLoadAmps is not null && (one.Volts is not { } volts || VoltTap.Of(volts) == tap))
            .MinBy(one => Math.Abs((one.Speed?.RevolutionsPerMinute ?? rpm) - rpm));
        return row?.FullLoadAmps is { } amps ? Math.Max(amps.First.Amperes, amps.Last.Amperes) : null;
    }
}
