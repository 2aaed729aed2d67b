using System.Numerics;

namespace PartsMatch.Fit.Quantities;

/// <summary>Writes a number as a fraction where the trade does: 1/4 hp, 7/16 in, 1-1/2 hp.</summary>
public static class FractionText
{
    /// <summary>Halves to sixty-fourths of an inch, and the denominators of the small horsepower series (1/3, 1/6, 1/20 ...).</summary>
    private static readonly int[] Denominators = [2, 4, 8, 16, 32, 64, 3, 5, 6, 10, 12, 15, 20, 25, 30, 35, 40, 50, 60, 70, 75, 80, 100, 125, 150, 200];

    /// <summary>Whether a rule or a drawing divides an inch so: halves to sixty-fourths.</summary>
    public static bool DividesAnInch(int denominator) => denominator is >= 2 and <= 64 && int.IsPow2(denominator);

    /// <summary>Whether the trade writes this fraction so: 1/4 and 7/16, but neither 2/8 nor 4/1 nor 5/7. What stands apart, as in 1 / 4, is one figure then, and two otherwise.</summary>
    public static bool IsUsual(int above, int below) => below > 0 && Exactly((double)above / below) == FormattableString.Invariant($"{above}/{below}");

    /// <summary>The fraction that is exactly this number, or null when it is whole or has none of a usual denominator.</summary>
    /// <param name="value">At least 0. A third counts when it is the nearest number to a third that the type can hold.</param>
    /// <param name="ofInches">Whether only what divides an inch is a fraction: 0.2 in is no 1/5 in.</param>
    /// <typeparam name="T">double or decimal.</typeparam>
    public static string? Exactly<T>(T value, bool ofInches = false)
        where T : IFloatingPoint<T>
    {
        var whole = T.Floor(value);
        foreach (var denominator in Denominators)
        {
            if (ofInches && !DividesAnInch(denominator)) continue;
            var divisor = T.CreateChecked(denominator);
            var numerator = T.Round((value - whole) * divisor);
            if (numerator < T.One || numerator >= divisor || whole + (numerator / divisor) != value) continue;

            // Apart from halves to sixty-fourths and thirds, the trade's fractions are one over something: 0.3 stays 0.3.
            if (numerator > T.One && denominator > 3 && !int.IsPow2(denominator)) continue;
            return T.IsZero(whole)
                ? FormattableString.Invariant($"{numerator:0}/{denominator}")
                : FormattableString.Invariant($"{whole:0}-{numerator:0}/{denominator}");
        }

        return null;
    }
}
