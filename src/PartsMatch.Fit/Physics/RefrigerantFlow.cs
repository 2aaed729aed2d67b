using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Physics;

/// <summary>How much refrigerant a load makes circulate, and what it weighs where a valve sits.</summary>
public static class RefrigerantFlow
{
    /// <summary>A saturated vapour at <see cref="NearlyIdealCelsius"/> may still be so much heavier than an ideal gas (practice).</summary>
    private const double NearlyIdealShare = 0.95;

    /// <summary>The coldest of the tables, °C.</summary>
    private const double NearlyIdealCelsius = -40;

    /// <summary>From here on a superheated vapour may be as light as an ideal gas is, K (practice): it moves away from saturation fastest at first.</summary>
    private const double FarFromSaturation = 20;

    private const double ZeroCelsius = 273.15;

    /// <summary>The approximation is for superheats up to here, K.</summary>
    public const double MostSuperheat = 40;

    /// <summary>Mass flow for a load: the load over the enthalpy between vapour leaving the evaporator, taken as saturated, and liquid entering its valve.</summary>
    /// <param name="refrigerant">The refrigerant.</param>
    /// <param name="watts">The evaporator's load, W.</param>
    /// <param name="evaporatingCelsius">Dew temperature in the evaporator, °C.</param>
    /// <param name="liquidCelsius">Temperature of the liquid before the valve, °C; condensed or subcooled.</param>
    /// <returns>kg/h; null for a refrigerant without tables, or outside of −40 to 60 °C.</returns>
    public static double? KilogramsAnHour(Refrigerant refrigerant, double watts, double evaporatingCelsius, double liquidCelsius)
    {
        ArgumentNullException.ThrowIfNull(refrigerant);
        return Effect(refrigerant, evaporatingCelsius, liquidCelsius) is { } effect and > 0 ? watts * 3.6 / effect : null;
    }

    /// <summary>Refrigerating effect: enthalpy that a kilogram takes up in the evaporator.</summary>
    /// <param name="refrigerant">The refrigerant.</param>
    /// <param name="evaporatingCelsius">Dew temperature in the evaporator, °C.</param>
    /// <param name="liquidCelsius">Temperature of the liquid before the valve, °C.</param>
    /// <returns>kJ/kg; null for a refrigerant without tables, or outside of −40 to 60 °C.</returns>
    public static double? Effect(Refrigerant refrigerant, double evaporatingCelsius, double liquidCelsius)
    {
        ArgumentNullException.ThrowIfNull(refrigerant);
        return refrigerant.VapourEnthalpy(evaporatingCelsius) - refrigerant.LiquidEnthalpy(liquidCelsius);
    }

    /// <summary>Density of superheated vapour: at the heaviest the saturated vapour's of the same pressure, thinned as an ideal gas is by temperature; at the lightest, 20 K over its dew point, an ideal gas's.</summary>
    /// <remarks>
    /// How much a vapour is denser than an ideal gas grows with its pressure: little in a suction line, a quarter and more in hot gas. Superheat takes that away by and by, and never more than all of it.
    /// What an ideal gas would weigh follows from the saturated vapour at −40 °C, which is nearly one.
    /// </remarks>
    /// <param name="refrigerant">The refrigerant.</param>
    /// <param name="dewCelsius">Dew temperature at its pressure, °C.</param>
    /// <param name="celsius">Its temperature, °C; at least the dew temperature, at most 40 K over it.</param>
    /// <returns>A band in kg/m³, exact at saturation; null for a refrigerant without tables or curve, or outside its range.</returns>
    public static Band? VapourDensity(Refrigerant refrigerant, double dewCelsius, double celsius)
    {
        ArgumentNullException.ThrowIfNull(refrigerant);
        var superheat = celsius - dewCelsius;
        if (!Within.Span(superheat, 0, MostSuperheat) || refrigerant.VapourDensity(dewCelsius) is not { } saturated) return null;
        if (Ideality(refrigerant, dewCelsius) / Ideality(refrigerant, NearlyIdealCelsius) is not { } share) return null;
        var heaviest = saturated * (dewCelsius + ZeroCelsius) / (celsius + ZeroCelsius);
        var gone = Math.Clamp(superheat / FarFromSaturation, 0, 1) * (1 - (NearlyIdealShare * Math.Min(1, share)));
        return new(heaviest * (1 - gone), heaviest);
    }

    /// <summary>Pressure over density and absolute temperature of the saturated vapour, kPa m³/(kg K): the less of an ideal gas it is, the smaller.</summary>
    private static double? Ideality(Refrigerant refrigerant, double dewCelsius) =>
        refrigerant.DewPressure(Temperature.FromDegreesCelsius(dewCelsius))?.Kilopascals / refrigerant.VapourDensity(dewCelsius) / (dewCelsius + ZeroCelsius);
}
