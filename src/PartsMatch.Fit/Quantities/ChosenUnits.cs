using UnitsNet;

namespace PartsMatch.Fit.Quantities;

/// <summary>Figures that are kept as plain numbers beside the symbol of their unit, in the units that someone chose. They are converted and rounded by the quantities' own forms.</summary>
/// <remarks>Volts, amps, hertz, rpm, µF and percent are the same in both systems; K and °F are taken for differences, °C for temperatures.</remarks>
public static class ChosenUnits
{
    private static readonly Dictionary<string, Func<double, Units, Figure?>> Forms = new(StringComparer.Ordinal)
    {
        ["mm"] = (value, units) => QuantityForms.Length.FigureOf(Length.FromMillimeters(value), units),
        ["m"] = (value, units) => QuantityForms.Length.FigureOf(Length.FromMeters(value), units),
        ["W"] = (value, units) => QuantityForms.Power.FigureOf(Power.FromWatts(value), units),
        ["kPa"] = (value, units) => PressureDifference.Form.FigureOf(new PressureDifference(Pressure.FromKilopascals(value)), units),
        ["°C"] = (value, units) => QuantityForms.Temperature.FigureOf(Temperature.FromDegreesCelsius(value), units),
        ["K"] = (value, units) => QuantityForms.TemperatureDifference.FigureOf(TemperatureDelta.FromKelvins(value), units),
        ["°F"] = (value, units) => QuantityForms.TemperatureDifference.FigureOf(TemperatureDelta.FromDegreesFahrenheit(value), units),
    };

    /// <summary>Whether a figure of this unit is written in another where those units are chosen.</summary>
    /// <param name="unit">The unit's symbol.</param>
    /// <param name="units">The units that were chosen.</param>
    public static bool Change(string unit, Units units) => In(1, unit, units).Unit != unit;

    /// <summary>A figure in the units that were chosen; the same figure where its unit belongs to them.</summary>
    /// <param name="value">The number; of either sign.</param>
    /// <param name="unit">Its unit's symbol.</param>
    /// <param name="units">The units that were chosen.</param>
    public static Figure In(double value, string unit, Units units) =>
        units != Units.AsGiven && Forms.TryGetValue(unit, out var form) && form(value, units) is { Unit: { } symbol } figure && symbol != unit ? figure : new(value, unit);

    /// <summary>A band in the units that were chosen.</summary>
    /// <param name="band">From where to where.</param>
    /// <param name="unit">Its unit's symbol.</param>
    /// <param name="units">The units that were chosen.</param>
    public static Band In(Band band, string unit, Units units) => new(In(band.Low, unit, units).Value, In(band.High, unit, units).Value);
}
