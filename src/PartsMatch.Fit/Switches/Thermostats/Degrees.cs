using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>Temperatures as thermostats' facets hold them, and how near two of them are.</summary>
/// <remarks>°C to 0.01, so that a distance of so many °F and its SI figure come to the same: 5 °F are 2.78 K and are written 2.8 K, 10 °F are 5.56 K and are written 5.6 K.</remarks>
internal static class Degrees
{
    /// <summary>5 °F, K (practice).</summary>
    public const double Near = 2.8;

    /// <summary>10 °F, K (practice).</summary>
    public const double Far = 5.6;

    /// <summary>2 °F, K: by so much may a differential differ (practice).</summary>
    public const double NearDifferential = 1.12;

    /// <summary>A temperature in °C.</summary>
    public static double In(Temperature temperature) => Rounded.To(temperature.DegreesCelsius, 2);

    /// <summary>A temperature in °C; null when not known.</summary>
    public static double? In(Temperature? temperature) => temperature is { } known ? In(known) : null;

    /// <summary>By how much two temperatures differ, K.</summary>
    public static double Between(double one, double other) => Rounded.To(Math.Abs(one - other), 2);

    /// <summary>Whether two temperatures are within 5 °F of each other.</summary>
    public static bool AreNear(double one, double other) => Within.AtMost(Between(one, other), Near);

    /// <summary>Whether two temperatures are known, and over 5 °F off.</summary>
    public static bool AreOthers(Temperature? one, Temperature? other) => In(one) is { } has && In(other) is { } needed && !AreNear(has, needed);
}
