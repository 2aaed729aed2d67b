using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Physics;

/// <summary>How the condensing split of an air-cooled condenser changes with its airflow, at the same heat and the same condensing temperature all over the coil.</summary>
/// <remarks>
/// Effectiveness-NTU with the capacity ratio 0: ε = 1 − exp(−NTU) (Kays and London; ASHRAE Handbook Fundamentals). Split = heat / (ε · C), C the air's capacity rate.
/// The air-side conductance goes with a power of the airflow, about 0.5 for finned coils; refrigerant side and fins are taken as part of it.
/// </remarks>
public static class CondenserSplit
{
    /// <summary>Effectiveness of an ordinary air-cooled condenser, for when nothing better is known: the air takes up half to seven tenths of the split.</summary>
    public static Band UsualEffectiveness { get; } = new(0.5, 0.7);

    /// <summary>Exponent of the air-side conductance on the airflow for ordinary finned coils.</summary>
    public static Band UsualExponent { get; } = new(0.4, 0.6);

    /// <summary>Where the usual bands come from.</summary>
    public static Source UsualBands { get; } = new("Air-cooled condensers: effectiveness 0.5 to 0.7, air-side conductance with the 0.4th to 0.6th power of the airflow", SourceStatus.Practice);

    /// <summary>The split, new over old, for an airflow ratio over the whole coil.</summary>
    /// <param name="airflow">New airflow over old; above 0.</param>
    /// <param name="effectiveness">The coil's effectiveness before; above 0, below 1.</param>
    /// <param name="exponent">Of the conductance on the airflow, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is outside its range.</exception>
    public static double Ratio(double airflow, double effectiveness, double exponent)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(airflow);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(effectiveness);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(effectiveness, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(exponent);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(exponent, 1);
        var transferUnits = -Math.Log(1 - effectiveness) * Math.Pow(airflow, exponent - 1);
        return effectiveness / (airflow * (1 - Math.Exp(-transferUnits)));
    }

    /// <summary>The split, new over old, as a band: from the least it can be to the most.</summary>
    /// <param name="airflow">New airflow over old, over the whole coil; above 0.</param>
    /// <param name="effectiveness">The coil's effectiveness before; above 0, below 1.</param>
    /// <param name="exponent">Of the conductance on the airflow, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An end of a band is outside its range.</exception>
    public static Band SplitRatio(Band airflow, Band effectiveness, Band exponent)
    {
        // The ratio falls with the airflow, and at one airflow it rises or falls all the way with each of the others: its ends are at corners.
        var corners =
            from air in new[] { airflow.Low, airflow.High }
            from before in new[] { effectiveness.Low, effectiveness.High }
            from power in new[] { exponent.Low, exponent.High }
            select Ratio(air, before, power);
        return Band.Around([.. corners]);
    }

    /// <summary>The airflow that is left over the coil when some of several like fans stand still and the others run on at a ratio of their old airflow.</summary>
    /// <param name="fans">Fans on the coil; at least 1.</param>
    /// <param name="dead">Of them, those that stand; 0 to all but one.</param>
    /// <param name="airflowOfOthers">Airflow of a running one, new over old.</param>
    /// <returns>Airflow over the whole coil, new over old. Air that comes back through the dead openings is not counted: the true figure is lower.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A count is outside its range.</exception>
    public static double AirflowLeft(int fans, int dead, double airflowOfOthers = 1)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(fans, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(dead);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(dead, fans);
        return airflowOfOthers * (fans - dead) / fans;
    }

    /// <summary>The same, where the airflow of the running ones is a band.</summary>
    /// <param name="fans">Fans on the coil; at least 1.</param>
    /// <param name="dead">Of them, those that stand; 0 to all but one.</param>
    /// <param name="airflowOfOthers">Airflow of a running one, new over old.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count is outside its range.</exception>
    public static Band AirflowLeft(int fans, int dead, Band airflowOfOthers) => airflowOfOthers * AirflowLeft(fans, dead);
}
