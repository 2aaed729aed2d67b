namespace PartsMatch.Fit.Quantities;

/// <summary>Comparisons in which the edge belongs to the inside, with a slack of 1e-9 for binary arithmetic: 0.9 × 208 exceeds 187.2, and 126.5 / 115 − 1 is over 0.10.</summary>
public static class Within
{
    private const double Slack = 1e-9;

    /// <summary>Whether a value is at most a limit.</summary>
    public static bool AtMost(double value, double limit) => value <= limit + (Slack * Math.Max(1, Math.Abs(limit)));

    /// <summary>Whether a value is at least a limit.</summary>
    public static bool AtLeast(double value, double limit) => value >= limit - (Slack * Math.Max(1, Math.Abs(limit)));

    /// <summary>Whether a value lies between two limits.</summary>
    public static bool Span(double value, double least, double most) => AtLeast(value, least) && AtMost(value, most);

    /// <summary>Whether the larger of two positive values is at most so many times the smaller.</summary>
    public static bool Ratio(double one, double other, double most) => AtMost(Math.Max(one, other), Math.Min(one, other) * most);
}
