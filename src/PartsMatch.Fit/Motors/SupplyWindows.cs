using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>How far volts and frequency may lie off the plate's (NEMA MG 1 12.44).</summary>
public static class SupplyWindows
{
    /// <summary>Volts: 10 % either way, edges included.</summary>
    public const double MostVoltsOff = 0.10;

    /// <summary>Volts that nobody would give a thought: 5 % either way.</summary>
    public const double EasyVoltsOff = 0.05;

    /// <summary>Frequency: 5 % either way, edges included.</summary>
    public const double MostFrequencyOff = 0.05;

    /// <summary>Frequency that nobody would give a thought: 2 % either way, IEC 60034-1 zone A.</summary>
    public const double EasyFrequencyOff = 0.02;

    /// <summary>A motor that runs at all runs on volts nearer to its plate's than this (practice): further off, plate, supply or meter is wrong.</summary>
    public const double FurthestOff = 0.25;

    /// <summary>Both together, absolute percentages added.</summary>
    public const double MostTogether = 0.10;

    /// <summary>How far a frequency lies off a rated one, as a fraction of the rated.</summary>
    public static double FrequencyOff(double ratedHertz, double supplyHertz) => Math.Abs((supplyHertz / ratedHertz) - 1);

    /// <summary>Whether a motor rated for one frequency may run on another.</summary>
    public static bool TakesFrequency(double ratedHertz, double supplyHertz) => Within.AtMost(FrequencyOff(ratedHertz, supplyHertz), MostFrequencyOff);

    /// <summary>0 up to an easy deviation, 1 at the limit, and on beyond it.</summary>
    public static double Shortfall(double off, double easy, double most) => Math.Max(0, (off - easy) / (most - easy));
}
