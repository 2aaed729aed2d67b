namespace PartsMatch.Fit.Physics;

/// <summary>Unbalance of a three-phase supply's volts, and what it does to a motor.</summary>
/// <remarks>NEMA MG 1 12.45, 14.36: percent = 100 × largest deviation from the average / average.</remarks>
public static class Unbalance
{
    /// <summary>Percent unbalance of three line-to-line voltages.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A voltage is not positive.</exception>
    public static double Percent(double first, double second, double third)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(first);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(second);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(third);
        var average = (first + second + third) / 3;
        return 100 * new[] { first, second, third }.Max(volts => Math.Abs(volts - average)) / average;
    }

    /// <summary>Added temperature rise of the winding, percent: about 2 u² (NEMA MG 1 14.36, from memory).</summary>
    /// <param name="percent">Unbalance in percent, at least 0.</param>
    public static double AddedRisePercent(double percent) => 2 * percent * percent;
}
