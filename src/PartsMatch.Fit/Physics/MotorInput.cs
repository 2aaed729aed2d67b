using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Physics;

/// <summary>Input and shaft power of a motor from volts, amps, power factor and efficiency.</summary>
/// <remarks>P = V·I·pf, times √3 between the lines of three phases; shaft power = efficiency × input.</remarks>
public static class MotorInput
{
    /// <summary>Input power, W.</summary>
    /// <param name="volts">Between the lines, above 0.</param>
    /// <param name="amps">Of a line, above 0.</param>
    /// <param name="powerFactor">0 to 1.</param>
    /// <param name="threePhase">Whether there are three lines.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is outside its range.</exception>
    public static double Watts(double volts, double amps, double powerFactor, bool threePhase)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(powerFactor);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(powerFactor, 1);
        return VoltAmps(volts, amps, threePhase) * powerFactor;
    }

    /// <summary>Volt-amperes: no motor's shaft gives as much.</summary>
    /// <param name="volts">Between the lines, above 0.</param>
    /// <param name="amps">Of a line, above 0.</param>
    /// <param name="threePhase">Whether there are three lines.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is outside its range.</exception>
    public static double VoltAmps(double volts, double amps, bool threePhase)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(volts);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(amps);
        return volts * amps * (threePhase ? Math.Sqrt(3) : 1);
    }

    /// <summary>Shaft power, W, as far as volts, amps and the type's bands tell it.</summary>
    /// <param name="volts">Between the lines, above 0.</param>
    /// <param name="amps">Full-load amps of a line, above 0.</param>
    /// <param name="efficiency">Band of the efficiency, 0 to 1.</param>
    /// <param name="powerFactor">Band of the power factor, 0 to 1.</param>
    /// <param name="threePhase">Whether there are three lines.</param>
    public static Band ShaftWatts(double volts, double amps, Band efficiency, Band powerFactor, bool threePhase) =>
        efficiency * powerFactor * VoltAmps(volts, amps, threePhase);
}
