using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Published;

namespace PartsMatch.Fit.Physics;

/// <summary>A bubble or dew line: absolute pressure against temperature, in Pa and K.</summary>
/// <remarks>p = p_r · exp[(T_r / T) · Σ nᵢ · (1 − T/T_r)^tᵢ]. Never extrapolated: outside its range there is no answer.</remarks>
internal sealed class SaturationCurve
{
    /// <summary>
    /// The last thousandth below the reducing temperature (0.4 K) is left out: there R-407C's bubble line turns over and
    /// two temperatures share a pressure. No machine condenses so near the critical point.
    /// </summary>
    private const double HighestReducedTemperature = 0.999;

    private readonly double reducingKelvin;
    private readonly (double Factor, double Exponent)[] terms;
    private readonly double leastPascal;
    private readonly double mostPascal;

    /// <summary>A curve from its row in the table.</summary>
    public SaturationCurve(PublishedRow row)
    {
        reducingKelvin = row.Needed("t_r_K");
        ReducingPascal = row.Needed("p_r_Pa");
        terms = [.. Enumerable.Range(1, 6)
            .Select(index => (Factor: row.Number(FormattableString.Invariant($"n{index}")), Exponent: row.Number(FormattableString.Invariant($"t{index}"))))
            .Where(term => term.Factor is not null)
            .Select(term => (term.Factor!.Value, term.Exponent!.Value))];
        LeastKelvin = row.Needed("t_min_K");
        MostKelvin = Math.Min(row.Needed("t_max_K"), HighestReducedTemperature * reducingKelvin);
        Source = row.Source;
        leastPascal = At(LeastKelvin);
        mostPascal = At(MostKelvin);
    }

    /// <summary>Lowest temperature of the range, K.</summary>
    public double LeastKelvin { get; }

    /// <summary>Highest temperature of the range, K.</summary>
    public double MostKelvin { get; }

    /// <summary>The pressure that the equation is reduced by, Pa: the critical one, or for a blend the one at which its lines meet.</summary>
    public double ReducingPascal { get; }

    /// <summary>Who published the equation, or what it was fitted to.</summary>
    public Source Source { get; }

    /// <summary>Absolute pressure, Pa; null outside the range of temperatures.</summary>
    public double? Pascal(double kelvin) => kelvin >= LeastKelvin && kelvin <= MostKelvin ? At(kelvin) : null;

    /// <summary>Temperature, K, to far less than 0.01 K; null outside the range of pressures.</summary>
    public double? Kelvin(double pascal)
    {
        if (!(pascal >= leastPascal && pascal <= mostPascal)) return null;

        // Halving a bracket cannot leave the range and needs no slope; the curve rises all the way, so there is one root.
        var (low, high) = (LeastKelvin, MostKelvin);
        for (var halving = 0; halving < 50; halving++)
        {
            var middle = (low + high) / 2;
            if (At(middle) < pascal) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }

    private double At(double kelvin)
    {
        var theta = 1 - (kelvin / reducingKelvin);
        return ReducingPascal * Math.Exp(reducingKelvin / kelvin * terms.Sum(term => term.Factor * Math.Pow(theta, term.Exponent)));
    }
}
