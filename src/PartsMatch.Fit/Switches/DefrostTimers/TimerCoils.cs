using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Switches.DefrostTimers;

/// <summary>A timer's clock and release solenoid, and what feeds them.</summary>
internal static class TimerCoils
{
    /// <summary>A clock motor keeps its torque within a tenth of its volts (practice), and time at its own frequency exactly: off by no more than the 1 % that a grid may wander (EN 50160, from memory).</summary>
    public static CoilWindow Clock { get; } = new(0.9, 1.1, 1.1) { HertzOff = 0.01 };

    /// <summary>A solenoid pulls from 85 % of its volts, as a contactor's coil does (practice).</summary>
    public static CoilWindow Release { get; } = new(0.85, 1.1, 1.1);

    /// <summary>What the volts and frequencies of a clock or solenoid are as a facet.</summary>
    public static CoilFacet Of(Taps? volts, Figures<Frequency>? hertz) => CoilFacet.Of(volts, CoilCurrent.Alternating, hertz, null);

    /// <summary>What feeds one: what was measured, or else all that the old one was marked for.</summary>
    public static CoilSupply Feed(ElectricPotential? volts, Frequency? hertz, Taps? old, Figures<Frequency>? oldHertz)
    {
        var marked = Of(old, oldHertz).Own;
        var there = Rounded.Volts(volts);
        return new(there, Rounded.Hertz(hertz), CoilCurrent.Alternating, marked) { AreAsMarked = marked.Count == 1 && marked[0].Low.Equals(there) && marked[0].High.Equals(there) };
    }
}
