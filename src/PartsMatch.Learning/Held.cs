namespace PartsMatch.Learning;

/// <summary>How firmly hand-set costs are held: a height may well be off by all of itself and a little more, so that hundreds of outcomes move it and a few do not.</summary>
internal static class Held
{
    private const double Share = 1;
    private const double Least = 0.5;

    /// <summary>What is held before outcomes are seen.</summary>
    public static Prior About(Costs rescaled, FeatureColumns columns) => new(
        rescaled.OfColumn,
        [.. rescaled.OfColumn.Take(columns.Count).Select(cost => 1 / Math.Pow((Share * cost) + Least, 2))]);
}
