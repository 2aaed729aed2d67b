namespace PartsMatch.Fit.Physics;

/// <summary>Density of air by temperature and altitude.</summary>
/// <remarks>Ideal gas, dry, and the ICAO standard atmosphere's pressure (ISO 2533) up to 11 000 m.</remarks>
public static class Air
{
    /// <summary>Specific gas constant of dry air, J/(kg·K): ISO 2533.</summary>
    private const double GasConstant = 287.05287;

    /// <summary>Lowest altitude that the formulas are for, m.</summary>
    private const double LeastMetres = -500;

    /// <summary>Highest altitude that the formulas are for, m: above it the standard atmosphere no longer cools.</summary>
    private const double MostMetres = 11_000;

    /// <summary>Whether the formulas hold at an altitude: −500 to 11 000 m.</summary>
    /// <param name="altitudeMetres">Above sea level, m.</param>
    public static bool Holds(double altitudeMetres) => altitudeMetres is >= LeastMetres and <= MostMetres;

    /// <summary>Pressure at an altitude, Pa.</summary>
    /// <param name="altitudeMetres">Above sea level, −500 to 11 000 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">The altitude is outside the range.</exception>
    public static double Pressure(double altitudeMetres)
    {
        if (!Holds(altitudeMetres)) throw new ArgumentOutOfRangeException(nameof(altitudeMetres), altitudeMetres, "The altitude must lie between −500 and 11 000 m.");
        return 101_325 * Math.Pow(1 - (0.0065 * altitudeMetres / 288.15), 5.25588);
    }

    /// <summary>Density, kg/m³.</summary>
    /// <param name="celsius">Temperature, −100 to 300 °C.</param>
    /// <param name="altitudeMetres">Above sea level, −500 to 11 000 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is outside its range.</exception>
    public static double Density(double celsius, double altitudeMetres = 0)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(celsius, -100);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(celsius, 300);
        return Pressure(altitudeMetres) / (GasConstant * (celsius + 273.15));
    }
}
