using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using UnitsNet;

namespace PartsMatch.Fit.Published;

/// <summary>What a class of insulation bears.</summary>
/// <param name="Class">The class.</param>
/// <param name="Limit">The hottest the winding may get.</param>
/// <param name="Rise">Rise over 40 °C by resistance at service factor 1.0; null where the table has none.</param>
/// <param name="RiseWithServiceFactor">The same at a service factor above 1.0.</param>
/// <param name="Source">The tables.</param>
public sealed record InsulationLimit(InsulationClass Class, Temperature Limit, TemperatureDelta? Rise, TemperatureDelta? RiseWithServiceFactor, Source Source);

/// <summary>Classes of insulation: IEC 60085, with the rises of NEMA MG 1 12.42.1 for small motors.</summary>
public static class InsulationClasses
{
    /// <summary>All classes.</summary>
    public static IReadOnlyList<InsulationLimit> All { get; } = [.. PublishedTable.Read("insulation").Select(row => new InsulationLimit(
        Enum.Parse<InsulationClass>(row.Text("class")),
        Temperature.FromDegreesCelsius(row.Needed("limit_C")),
        Kelvins(row.Number("rise_K")),
        Kelvins(row.Number("rise_K_with_service_factor")),
        row.Source))];

    private static readonly Dictionary<InsulationClass, double> Limits = All.ToDictionary(limit => limit.Class, limit => limit.Limit.DegreesCelsius);

    /// <summary>The hottest that a class bears, °C.</summary>
    public static double LimitCelsius(InsulationClass insulation) => Limits[insulation];

    /// <summary>What a class bears.</summary>
    public static InsulationLimit Of(InsulationClass insulation) => All.First(limit => limit.Class == insulation);

    private static TemperatureDelta? Kelvins(double? kelvins) => kelvins is { } known ? TemperatureDelta.FromKelvins(known) : null;
}
