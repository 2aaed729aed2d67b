using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Coils;

/// <summary>What coils are marked with: volts, and the mains that they are for.</summary>
internal static class CoilMarks
{
    /// <summary>The volts of a coil. The 60 of COIL 120/60 is no second voltage: no coil is made for the mains' hertz in volts beside another (practice).</summary>
    /// <param name="field">The field's name.</param>
    /// <param name="least">The least volts that coils of the family are made for.</param>
    public static PlateLimit Volts(string field, double least) => PlateLimit.Of<Taps>(
        field,
        FormattableString.Invariant($"from {least} to 600 V, where 50 and 60 beside others are hertz"),
        all => all.All(volts => Within.Span(volts.First.Volts, least, 600) && Within.Span(volts.Last.Volts, least, 600) && (all.Count == 1 || !IsMains(volts.First.Volts))));

    /// <summary>The frequencies of mains, of which one without its unit is known behind a coil's volts.</summary>
    /// <param name="field">The field's name.</param>
    public static PlateLimit Mains(string field) => PlateLimit.Of<Figures<Frequency>>(field, "50 or 60 Hz", all => all.All(frequency => IsMains(frequency.Hertz)));

    /// <summary>Units of what a coil, or the motor of a clock, takes: watts, and volt-amperes.</summary>
    public static IReadOnlyList<string> Taken { get; } = [QuantityForms.Power.Si.Symbol, .. QuantityForms.Power.Si.Spellings, .. QuantityForms.VoltAmperes.UnitSpellings];

    private static bool IsMains(double figure) => figure is 50 or 60;
}
