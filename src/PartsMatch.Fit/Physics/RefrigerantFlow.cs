using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Physics;

/// <summary>How much refrigerant a load makes circulate, and what it weighs where a valve sits.</summary>
public static class RefrigerantFlow
{
    /// <summary>Superheated vapour is up to so much lighter than the approximation says, at up to <see cref="MostSuperheat"/> (practice): vapour moves away from saturation faster than an ideal gas.</summary>
    private const double LightestShare = 0.95;

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

    /// <summary>Density of superheated vapour: the saturated vapour's of the same pressure, thinned as an ideal gas is by temperature, and at the lightest 5 % less.</summary>
    /// <param name="refrigerant">The refrigerant.</param>
    /// <param name="dewCelsius">Dew temperature at its pressure, °C.</param>
    /// <param name="celsius">Its temperature, °C; at least the dew temperature, at most 40 K over it.</param>
    /// <returns>A band in kg/m³, exact at saturation; null for a refrigerant without tables or outside its range.</returns>
    public static Band? VapourDensity(Refrigerant refrigerant, double dewCelsius, double celsius)
    {
        ArgumentNullException.ThrowIfNull(refrigerant);
        var superheat = celsius - dewCelsius;
        if (!Within.Span(superheat, 0, MostSuperheat) || refrigerant.VapourDensity(dewCelsius) is not { } saturated) return null;
        var ideal = saturated * (dewCelsius + 273.15) / (celsius + 273.15);
        return new(ideal * (1 - ((1 - LightestShare) * superheat / MostSuperheat)), ideal);
    }
}
