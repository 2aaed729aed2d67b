using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Published;

/// <summary>Conductors and overload devices of a motor's circuit: NFPA 70 430.22, 430.24 and 430.32.</summary>
public static class MotorCircuit
{
    /// <summary>125 % for conductors.</summary>
    public static Source Conductors { get; } = new("NFPA 70 430.22", SourceStatus.Published);

    /// <summary>125 % of the largest motor and the others as they are.</summary>
    public static Source Feeders { get; } = new("NFPA 70 430.24", SourceStatus.Memory);

    /// <summary>125 or 115 % for overload devices.</summary>
    public static Source Overloads { get; } = new("NFPA 70 430.32(A)(1)", SourceStatus.Published);

    /// <summary>What the conductors of one continuous-duty motor must carry at least, A.</summary>
    /// <param name="fullLoadAmps">Full-load current of the code's table, A; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The current is not above 0.</exception>
    public static double ConductorAmps(double fullLoadAmps) => ConductorAmps([fullLoadAmps]);

    /// <summary>What the conductors of several motors together must carry at least, A: 125 % of the largest and the others as they are.</summary>
    /// <param name="fullLoadAmps">Full-load currents of the code's table, A; each above 0, at least one.</param>
    /// <exception cref="ArgumentOutOfRangeException">A current is not above 0.</exception>
    public static double ConductorAmps(IReadOnlyCollection<double> fullLoadAmps)
    {
        foreach (var amps in fullLoadAmps) ArgumentOutOfRangeException.ThrowIfNegativeOrZero(amps, nameof(fullLoadAmps));
        return fullLoadAmps.Sum() + (0.25 * fullLoadAmps.Max());
    }

    /// <summary>The most an overload device of a continuous-duty motor may be set to, A: 125 % of the plate's amps with a marked service factor of at least 1.15 or a marked rise of at most 40 °C, else 115 %.</summary>
    /// <param name="nameplateAmps">The plate's current, A (not the table's); above 0.</param>
    /// <param name="serviceFactor">The marked service factor; null when none is.</param>
    /// <param name="riseKelvins">The marked temperature rise, K; null when none is.</param>
    /// <exception cref="ArgumentOutOfRangeException">The current is not above 0.</exception>
    public static double OverloadAmps(double nameplateAmps, double? serviceFactor, double? riseKelvins)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(nameplateAmps);
        var more = (serviceFactor is { } factor && Within.AtLeast(factor, 1.15)) || (riseKelvins is { } rise && Within.AtMost(rise, 40));
        return nameplateAmps * (more ? 1.25 : 1.15);
    }
}
