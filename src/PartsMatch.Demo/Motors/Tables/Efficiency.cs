using PartsMatch.Fit.Motors;

namespace PartsMatch.Demo.Motors.Tables;

/// <summary>Two ends between which something lies.</summary>
public sealed record Band(double Low, double High)
{
    /// <summary>The figure at a share (0 to 1) of the way.</summary>
    public double At(double share) => Low + ((High - Low) * Math.Clamp(share, 0, 1));
}

/// <summary>Full-load efficiency and power factor by type and size.</summary>
/// <remarks>Sources: small fan motors up to 50 W, published trade-magazine article (shaded pole 15-30, split capacitor 35-50, electronically commutated 65-75 %);
/// larger split capacitor 40-60 %, a general engineering page; split phase 50-65 %, textbook; capacitor-start and polyphase, the minimums of 10 CFR 431.446(a) for open motors and a little over;
/// IEC small three-phase and larger electronically commutated motors, and all power factors: from memory, unchecked.</remarks>
public static class Efficiency
{
    private const double SmallWatts = 50;

    /// <summary>10 CFR 431.446(a), percent: hp, poles, polyphase, capacitor-start.</summary>
    private static readonly (double Hp, int Poles, double Polyphase, double CapacitorStart)[] Minimums =
    [
        (0.25, 2, 65.6, 66.6), (0.25, 4, 69.5, 68.5), (0.25, 6, 67.5, 62.2),
        (0.33, 2, 69.5, 70.5), (0.33, 4, 73.4, 72.4), (0.33, 6, 71.4, 66.6),
        (0.5, 2, 73.4, 72.4), (0.5, 4, 78.2, 76.2), (0.5, 6, 75.3, 76.2),
        (0.75, 2, 76.8, 76.2), (0.75, 4, 81.1, 81.8), (0.75, 6, 81.7, 80.2),
        (1, 2, 77.0, 80.4), (1, 4, 83.5, 82.6), (1, 6, 82.5, 81.1),
        (1.5, 2, 84.0, 81.5), (1.5, 4, 86.5, 83.8), (1.5, 6, 83.8, 83.8),
        (2, 2, 85.5, 82.9), (2, 4, 86.5, 84.5), (3, 2, 85.5, 84.1), (3, 4, 86.9, 84.5),
    ];

    /// <summary>Efficiency of an electrical type at so many shaft watts, as a ratio.</summary>
    public static Band Of(MotorType type, double watts, int poles, PlateStandard standard) => type switch
    {
        MotorType.ShadedPole => watts < 10 ? new(0.15, 0.22) : new(0.19, 0.30),
        MotorType.PermanentSplitCapacitor => watts <= SmallWatts ? new(0.35, 0.50) : watts < 220 ? new(0.42, 0.56) : new(0.48, 0.60),
        MotorType.SplitPhase => new(0.50, 0.65),
        MotorType.CapacitorStart or MotorType.CapacitorStartCapacitorRun => OverMinimum(watts, poles, row => row.CapacitorStart),
        MotorType.ElectronicallyCommutated => watts <= SmallWatts ? new(0.65, 0.75) : new(0.72, 0.82),
        _ when standard == PlateStandard.Iec => IecThreePhase(watts, poles),
        _ => OverMinimum(watts, poles, row => row.Polyphase),
    };

    /// <summary>Power factor of a type.</summary>
    public static Band PowerFactorOf(MotorType type) => type switch
    {
        MotorType.ShadedPole => new(0.55, 0.65),
        MotorType.PermanentSplitCapacitor => new(0.90, 0.98),
        MotorType.SplitPhase or MotorType.CapacitorStart => new(0.55, 0.70),
        MotorType.CapacitorStartCapacitorRun => new(0.85, 0.97),
        MotorType.ElectronicallyCommutated => new(0.50, 0.65),
        _ => new(0.65, 0.85),
    };

    private static Band OverMinimum(double watts, int poles, Func<(double Hp, int Poles, double Polyphase, double CapacitorStart), double> column)
    {
        var hp = watts / 746;
        var nearest = Minimums.Where(row => row.Poles == Math.Min(poles, 6)).MinBy(row => Math.Abs(row.Hp - hp));
        return new(column(nearest) / 100, (column(nearest) + 3.5) / 100);
    }

    private static Band IecThreePhase(double watts, int poles)
    {
        var fewer = poles >= 6 ? 0.05 : 0;
        var middle = watts switch { < 100 => 0.54, < 200 => 0.60, < 300 => 0.66, < 500 => 0.71, < 800 => 0.76, < 1300 => 0.80, _ => 0.83 } - fewer;
        return new(middle - 0.03, middle + 0.03);
    }
}
