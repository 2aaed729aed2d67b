namespace PartsMatch.Fit.Quantities;

/// <summary>How far apart two values of a field lie on its own scale: 0 where they are alike, 1 where one is another thing altogether.</summary>
/// <remarks>A number is a step from one a quarter greater; where zero is only where the scale begins, as of temperatures, a step is so many units. Practice: 1/4 and 1/3 hp are two sizes, 1075 and 1100 rpm are one.</remarks>
public static class Steps
{
    /// <summary>How much greater a number is that is a step away.</summary>
    public const double Ratio = 1.25;

    /// <summary>Where a number stands, in steps.</summary>
    /// <param name="number">The number, in whatever unit its like are in as well.</param>
    /// <param name="step">How much a step is in that unit; null of what has a natural zero, where a step is a quarter more.</param>
    /// <returns>None of zero, which is no number of steps from anything.</returns>
    public static IReadOnlyList<double> Of(double number, double? step = null) =>
        step is { } units ? [number / units] : number > 0 ? [Math.Log(number) / Math.Log(Ratio)] : [];

    /// <summary>How far apart two values lie, 0 to 1: as their figures do that lie furthest apart; a step or more is 1, and so is everything between different words, or different counts of figures.</summary>
    public static double Apart(ReadOnlySpan<double> one, ReadOnlySpan<double> other)
    {
        if (one.Length == 0 || one.Length != other.Length) return 1;
        var most = 0.0;
        for (var at = 0; at < one.Length && most < 1; at++) most = Math.Max(most, Math.Abs(one[at] - other[at]));
        return Math.Min(1, most);
    }
}
