using System.Runtime.InteropServices;

namespace PartsMatch.Ranking;

/// <summary>Log-odds as a share, in billionths: whole numbers, so that a mean does not depend on the order in which it is summed.</summary>
/// <remarks>
/// A query about a need with unknowns asks some ten thousand times, and an exponential each time took longer than all else. Between 64 values a unit it is the cubic that has the curve's own
/// value and slope at both ends (Hermite's): off by less than a tenth of a billionth, since the curve's fourth derivative is at most 0.13 (h⁴/384 times that), and never falling. So few values stay near the processor.
/// </remarks>
internal static class Logistic
{
    /// <summary>A certain likelihood, in billionths.</summary>
    public const double Whole = 1e9;

    /// <summary>Beyond, in either direction, all is nothing or certain to a billionth.</summary>
    private const int Most = 22;

    private const int ValuesOfUnit = 64;

    private static readonly Value[] Values = [.. Enumerable.Range(0, (2 * Most * ValuesOfUnit) + 2).Select(at => Value.At((at / (double)ValuesOfUnit) - Most))];

    /// <summary>The share that log-odds stand for.</summary>
    public static long BillionthsOf(double logOdds)
    {
        var at = (Math.Clamp(logOdds, -Most, Most) + Most) * ValuesOfUnit;
        var below = (int)at;
        var (rest, from, to) = (at - below, Values[below], Values[below + 1]);
        var rise = to.Billionths - from.Billionths;
        return (long)Math.Round(from.Billionths + (rest * (from.Slope + (rest * ((3 * rise) - (2 * from.Slope) - to.Slope + (rest * (from.Slope + to.Slope - (2 * rise))))))));
    }

    /// <summary>The curve at one of the values.</summary>
    /// <param name="Billionths">Its height.</param>
    /// <param name="Slope">How much it rises to the next value, were it straight.</param>
    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Value(double Billionths, double Slope)
    {
        public static Value At(double logOdds)
        {
            var share = 1 / (1 + Math.Exp(-logOdds));
            return new(Whole * share, Whole * share * (1 - share) / ValuesOfUnit);
        }
    }
}
