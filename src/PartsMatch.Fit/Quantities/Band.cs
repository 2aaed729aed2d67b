using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Quantities;

/// <summary>A value known only to lie between two limits: every estimate is one, never a single figure as if it were measured.</summary>
/// <param name="Low">The least it can be.</param>
/// <param name="High">The most it can be; at least <paramref name="Low"/>.</param>
public readonly record struct Band(double Low, double High)
{
    /// <summary>The middle.</summary>
    public double Middle => (Low + High) / 2;

    /// <summary>Whether it is one value.</summary>
    public bool IsExact => Low.Equals(High);

    /// <summary>Both ends; one when they are the same.</summary>
    public Sequence<double> Ends => IsExact ? [Low] : [Low, High];

    /// <summary>A value known exactly.</summary>
    public static Band Exactly(double value) => new(value, value);

    /// <summary>The least band that holds all of these values.</summary>
    /// <param name="values">At least one.</param>
    public static Band Around(params ReadOnlySpan<double> values)
    {
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var value in values) (low, high) = (Math.Min(low, value), Math.Max(high, value));
        return new(low, high);
    }

    /// <summary>Every product of a value of one and a value of the other; both positive.</summary>
    public static Band operator *(Band one, Band other) => new(one.Low * other.Low, one.High * other.High);

    /// <summary>Every quotient of a value of one by a value of the other; both positive.</summary>
    public static Band operator /(Band one, Band other) => new(one.Low / other.High, one.High / other.Low);

    /// <summary>A band times a positive number.</summary>
    public static Band operator *(Band one, double factor) => new(one.Low * factor, one.High * factor);

    /// <summary>Whether a value lies in it, edges included.</summary>
    public bool Holds(double value) => Within.Span(value, Low, High);

    /// <summary>The part that two bands share; null when they share none.</summary>
    public Band? Shared(Band other)
    {
        var (low, high) = (Math.Max(Low, other.Low), Math.Min(High, other.High));
        return Within.AtMost(low, high) ? new(low, Math.Max(low, high)) : null;
    }

    /// <summary>The band in figures: 986-1028, or one figure when both ends round alike.</summary>
    /// <param name="format">A number format for each end.</param>
    public string ToString(string format)
    {
        var low = Low.ToString(format, System.Globalization.CultureInfo.InvariantCulture);
        var high = High.ToString(format, System.Globalization.CultureInfo.InvariantCulture);
        return low == high ? low : $"{low} to {high}";
    }
}
