namespace PartsMatch.Fit.Judging;

/// <summary>Rounds a facet's numbers to the trade's precision, so that values that only arithmetic tells apart become one facet.</summary>
public static class Rounded
{
    /// <summary>Keeps halves on one side: 9.525 mm from 3/8 in and 9.525 mm as written may differ in the last bit.</summary>
    private const double Nudge = 1e-6;

    /// <summary>A value with so many digits behind the point.</summary>
    public static double To(double value, int digits) => Math.Round(value + Nudge, digits);
}
