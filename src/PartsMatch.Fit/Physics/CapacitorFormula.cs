namespace PartsMatch.Fit.Physics;

/// <summary>What a capacitor on alternating current does: plain physics, in µF, V, A, Hz and J.</summary>
/// <remarks>Every argument must be a number above 0; anything else is a mistake of the caller. Formulas: physics, any textbook of alternating current.</remarks>
public static class CapacitorFormula
{
    private const double MicrofaradsInAFarad = 1e6;

    /// <summary>Capacitance from what a clamp and a volt meter show under load: C = I·10⁶ / (2π·f·V), in µF.</summary>
    /// <param name="amps">Current in the capacitor's lead, A.</param>
    /// <param name="volts">Volts across the capacitor, V.</param>
    /// <param name="hertz">Frequency, Hz.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not a finite number above 0.</exception>
    public static double Microfarads(double amps, double volts, double hertz) => ConstantAt(hertz) * Positive(amps, nameof(amps)) / Positive(volts, nameof(volts));

    /// <summary>The trade's constant k in C = k·I/V: 2652 at 60 Hz, 3183 at 50 Hz.</summary>
    /// <param name="hertz">Frequency, Hz.</param>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not a finite number above 0.</exception>
    public static double ConstantAt(double hertz) => MicrofaradsInAFarad / (2 * Math.PI * Positive(hertz, nameof(hertz)));

    /// <summary>Current that a capacitor takes: I = 2π·f·C·V, in A.</summary>
    /// <param name="microfarads">Capacitance, µF.</param>
    /// <param name="volts">Volts across it, V.</param>
    /// <param name="hertz">Frequency, Hz.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not a finite number above 0.</exception>
    public static double Amps(double microfarads, double volts, double hertz) => Positive(microfarads, nameof(microfarads)) * Positive(volts, nameof(volts)) / ConstantAt(hertz);

    /// <summary>Capacitance of capacitors side by side: they add, in µF.</summary>
    /// <exception cref="ArgumentOutOfRangeException">One is not a finite number above 0, or there is none.</exception>
    public static double Parallel(params IReadOnlyCollection<double> microfarads) => Some(microfarads).Sum(one => Positive(one, nameof(microfarads)));

    /// <summary>Capacitance of capacitors one behind the other: their reciprocals add, in µF.</summary>
    /// <exception cref="ArgumentOutOfRangeException">One is not a finite number above 0, or there is none.</exception>
    public static double Series(params IReadOnlyCollection<double> microfarads) => 1 / Some(microfarads).Sum(one => 1 / Positive(one, nameof(microfarads)));

    /// <summary>Energy that is left in a capacitor cut off at the peak of the wave: ½·C·V², with V = √2 times the effective volts, in J.</summary>
    /// <param name="microfarads">Capacitance, µF.</param>
    /// <param name="volts">Effective volts, V.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not a finite number above 0.</exception>
    public static double Joules(double microfarads, double volts) => Positive(microfarads, nameof(microfarads)) / MicrofaradsInAFarad * Positive(volts, nameof(volts)) * volts;

    private static double Positive(double value, string name) => double.IsFinite(value) && value > 0 ? value : throw new ArgumentOutOfRangeException(name, value, "A finite number above 0 is needed.");

    private static IReadOnlyCollection<double> Some(IReadOnlyCollection<double> values) => values.Count > 0 ? values : throw new ArgumentOutOfRangeException(nameof(values), "At least one capacitor is needed.");
}
