using PartsMatch.Ranking;

namespace PartsMatch.Learning;

/// <summary>Hand-set costs brought to the scale of what happened: one intercept and one factor for all of them, which a handful of outcomes is enough to fit.</summary>
public static class Rescaling
{
    /// <summary>So many made-up outcomes hold the factor near 1 while few are known.</summary>
    private const double Held = 10;

    /// <summary>The hand-set costs, times what fits best.</summary>
    /// <param name="examples">At least one.</param>
    /// <param name="columns">The family's columns.</param>
    public static Costs Of(IReadOnlyList<Example> examples, FeatureColumns columns)
    {
        var byHand = ByHand(columns);
        var one = examples.Select(example => Together(example, byHand)).ToList();
        var fitted = PenalisedFit.Of(one, new Prior([1], [Held]));
        return new(fitted.Intercept, [.. byHand.OfColumn.Select(cost => cost * fitted.OfColumn[0])]);
    }

    /// <summary>The hand-set costs that come with the program.</summary>
    public static Costs ByHand(FeatureColumns columns) => Costs.Of(Weights.HandSet(columns.Family), columns);

    /// <summary>Whether weights are nothing but those costs times one factor: somebody may have set others by hand since.</summary>
    public static bool CameTo(Weights weights, FeatureColumns columns)
    {
        var (byHand, costs) = (ByHand(columns).OfColumn, Costs.Of(weights, columns).OfColumn);
        var factor = costs.Sum() / byHand.Sum();
        return weights.Records.Count == 0 && byHand.Zip(costs).All(cost => Math.Abs((factor * cost.First) - cost.Second) < 1e-6);
    }

    /// <summary>An example of one column: what the hand-set costs come to.</summary>
    private static Example Together(Example example, Costs byHand)
    {
        var cost = byHand.Intercept - example.LogOdds(byHand);
        return cost > 0 ? example with { Columns = [0], Values = [cost] } : example with { Columns = [], Values = [] };
    }
}
