using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Published;

namespace PartsMatch.Fit.Physics;

/// <summary>Density and enthalpy of a refrigerant's saturated liquid and vapour against temperature, from a table in steps of 10 K.</summary>
/// <remarks>
/// Between rows a cubic through the four nearest is taken, of vapour density through its logarithm; within 0.05 % of the equations of state. Never extrapolated: outside the table there is no answer.
/// Liquid at its bubble line, vapour at its dew line; a blend's liquid and vapour of one temperature are not of one pressure. Enthalpy is 200 kJ/kg for saturated liquid at 0 °C.
/// </remarks>
internal sealed class SaturatedStates
{
    private const int Nearest = 4;

    private readonly double[] celsius;
    private readonly double[] liquidDensity;
    private readonly double[] logVapourDensity;
    private readonly double[] liquidEnthalpy;
    private readonly double[] vapourEnthalpy;

    private SaturatedStates(IReadOnlyList<PublishedRow> rows)
    {
        double[] Column(string name) => [.. rows.Select(row => row.Needed(name))];
        celsius = Column("t_C");
        liquidDensity = Column("liquid_density_kg_m3");
        logVapourDensity = [.. Column("vapour_density_kg_m3").Select(density => Math.Log(density))];
        liquidEnthalpy = Column("h_liquid_kJ_kg");
        vapourEnthalpy = Column("h_vapour_kJ_kg");
        Source = rows[0].Source;
    }

    /// <summary>Which equation of state the table was computed from.</summary>
    public Source Source { get; }

    /// <summary>Lowest temperature of the table, °C.</summary>
    public double LeastCelsius => celsius[0];

    /// <summary>Highest temperature of the table, °C.</summary>
    public double MostCelsius => celsius[^1];

    /// <summary>All tables, by the refrigerant's name.</summary>
    public static IReadOnlyDictionary<string, SaturatedStates> Load() =>
        PublishedTable.Read("refrigerant-properties").GroupBy(row => row.Text("refrigerant")).ToDictionary(rows => rows.Key, rows => new SaturatedStates([.. rows]));

    /// <summary>Density of liquid on the bubble line, kg/m³; null outside the table.</summary>
    public double? LiquidDensity(double at) => Between(liquidDensity, at);

    /// <summary>Density of vapour on the dew line, kg/m³; null outside the table.</summary>
    public double? VapourDensity(double at) => Between(logVapourDensity, at) is { } log ? Math.Exp(log) : null;

    /// <summary>Enthalpy of liquid on the bubble line, kJ/kg; null outside the table.</summary>
    public double? LiquidEnthalpy(double at) => Between(liquidEnthalpy, at);

    /// <summary>Enthalpy of vapour on the dew line, kJ/kg; null outside the table.</summary>
    public double? VapourEnthalpy(double at) => Between(vapourEnthalpy, at);

    /// <summary>Lagrange's cubic through the four rows round a temperature.</summary>
    private double? Between(double[] values, double at)
    {
        if (!(at >= LeastCelsius && at <= MostCelsius)) return null;
        var above = Array.FindIndex(celsius, row => row >= at);
        var first = Math.Clamp(above - (Nearest / 2), 0, celsius.Length - Nearest);
        var sum = 0.0;
        for (var one = first; one < first + Nearest; one++)
        {
            var term = values[one];
            for (var other = first; other < first + Nearest; other++)
            {
                if (other != one) term *= (at - celsius[other]) / (celsius[one] - celsius[other]);
            }

            sum += term;
        }

        return sum;
    }
}
