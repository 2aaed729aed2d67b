using UnitsNet;

namespace PartsMatch.Fit.Quantities;

/// <summary>Plain numbers for facets, and for what a need is compared by: one unit each, rounded to the trade's precision, null where unknown.</summary>
/// <remarks>1e-6 is added first, or 3/8 in and 9.525 mm, which differ in the last bit, could be rounded apart.</remarks>
internal static class Rounded
{
    private const double Nudge = 1e-6;
    private const double HalfATenth = 0.05;

    /// <summary>A length in mm, to 0.01 mm.</summary>
    public static double? Millimetres(Length? length) => To(length?.Millimeters, 2);

    /// <summary>A capacitance in µF, to 0.01 µF.</summary>
    public static double? Microfarads(ElectricCapacitance? capacitance) => To(capacitance?.Microfarads, 2);

    /// <summary>A voltage in V, to 0.1 V.</summary>
    public static double? Volts(ElectricPotential? volts) => To(volts?.Volts, 1);

    /// <summary>A temperature in °C, to 0.1 K.</summary>
    public static double? Celsius(Temperature? temperature) => To(temperature?.DegreesCelsius, 1);

    /// <summary>A frequency in Hz, to 0.01 Hz: mains are held to a few hundredths.</summary>
    public static double? Hertz(Frequency? frequency) => To(frequency?.Hertz, 2);

    /// <summary>A pressure in kPa, as the gauge shows it or as a difference, to 0.1 kPa.</summary>
    public static double? Kilopascal(Pressure? pressure) => To(pressure?.Kilopascals, 1);

    /// <summary>A pressure difference in kPa, to 0.1 kPa.</summary>
    public static double? Kilopascal(PressureDifference? difference) => Kilopascal(difference?.Value);

    /// <summary>A flow coefficient as Kv, m³/h, to 0.001.</summary>
    public static double? Kv(FlowCoefficient? coefficient) => To(coefficient?.Kv, 3);

    /// <summary>An apparent power in VA, to 0.1 VA.</summary>
    public static double? Voltamperes(ElectricApparentPower? power) => To(power?.Voltamperes, 1);

    /// <summary>What rounding to tenths may add to, or take from, a sum or difference of so many figures: 310 psi less 10 psi are 300 psi, and 2137.4 less 68.9 kPa are 0.1 kPa more than 2068.4 kPa.</summary>
    public static double OffBy(int figures) => figures * (HalfATenth + Nudge);

    /// <summary>A number with so many digits behind the point.</summary>
    public static double To(double value, int digits) => Math.Round(value + Nudge, digits);

    private static double? To(double? value, int digits) => value is { } known ? To(known, digits) : null;
}
