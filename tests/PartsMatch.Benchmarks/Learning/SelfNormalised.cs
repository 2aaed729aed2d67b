namespace PartsMatch.Benchmarks.Learning;

/// <summary>
/// What the first part of somebody's list would be right first time, by the records of those who put it in anyway: each weighed by one over how often parts of its place in the hand-set list are put in
/// (self-normalised inverse propensity, Swaminathan and Joachims 2015).
/// </summary>
/// <param name="Value">The weighed mean, 0 to 1; not a number where nobody put it in.</param>
/// <param name="Effective">How many records it rests on: the square of the weights' sum over the sum of their squares.</param>
/// <param name="Truth">What it is by the truth.</param>
internal sealed record SelfNormalised(double Value, double Effective, double Truth)
{
    /// <summary>Estimates it from needs that were held out.</summary>
    /// <remarks>What people know and no record tells is in no propensity: the skew is measured, and not taken out.</remarks>
    public static SelfNormalised Of(IReadOnlyList<OfferedNeed> needs, Func<Case, double> score)
    {
        List<(OfferedNeed Need, int Place)> installed = [.. needs.SelectMany(need => need.Offers.Index().Where(one => one.Item.Example.PartNumber == need.Lived.Outcome.New).Select(one => (need, one.Index)))];
        var share = installed.CountBy(one => one.Place).ToDictionary(one => one.Key, one => one.Value / (double)installed.Count);
        var (sum, weights, squares) = (0.0, 0.0, 0.0);
        foreach (var (need, place) in installed)
        {
            if (need.InOrder(score).First() != need.Offers[place]) continue;
            var weight = 1 / share[place];
            (weights, squares) = (weights + weight, squares + (weight * weight));
            if (need.Lived.Case.Example.Worked) sum += weight;
        }

        return new(sum / weights, squares > 0 ? weights * weights / squares : 0, needs.Average(need => need.InOrder(score).First().Right));
    }
}
