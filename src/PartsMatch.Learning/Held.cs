namespace PartsMatch.Learning;

/// <summary>
/// How firmly hand-set costs are held: a height may well be off by half of itself and a little more. Held more loosely, as much is lost on outcomes, but the order of lists suffers: people put in what looks like the old
/// part, and what outcomes say of those parts must not be carried over to parts that nobody has tried.
/// </summary>
/// <remarks>Chosen among nine widths on invented outcomes, by the loss and by the order of whole lists: docs/decisions/0008-costs-learnt-about-hand-set-ones.md has both.</remarks>
internal static class Held
{
    private const double Share = 0.5;
    private const double Least = 0.05;

    /// <summary>However little a family's hand-set costs come to together, each of them may be off by a quarter of what it was by hand: where one factor brings all of them low, some of them are wrong, and not all.</summary>
    private const double ShareByHand = 0.25;

    /// <summary>What is held before outcomes are seen.</summary>
    public static Prior About(Costs rescaled, FeatureColumns columns) => new(
        rescaled.OfColumn,
        [.. rescaled.OfColumn.Zip(Rescaling.ByHand(columns).OfColumn).Take(columns.Count).Select(cost => 1 / Math.Pow(Math.Max(Share * cost.First, ShareByHand * cost.Second) + Least, 2))]);
}
