using PartsMatch.Ranking;

namespace PartsMatch.Learning;

/// <summary>An outcome as training sees it.</summary>
/// <param name="Columns">The columns that are not 0, rising.</param>
/// <param name="Values">What stands in each of them; above 0.</param>
/// <param name="Outcome">The outcome.</param>
public sealed record Example(int[] Columns, double[] Values, Outcome Outcome)
{
    /// <summary>Whether it was right the first time: what a likelihood is the likelihood of.</summary>
    public bool Worked => Outcome.Result == Result.RightFirstTime;

    /// <summary>The log-odds under costs.</summary>
    /// <param name="costs">The intercept, and a cost for each column.</param>
    public double LogOdds(Costs costs)
    {
        var sum = costs.Intercept;
        for (var at = 0; at < Columns.Length; at++) sum -= costs.OfColumn[Columns[at]] * Values[at];
        return sum;
    }
}

/// <summary>What a model is: log-odds of a part that nothing speaks against, and what each column costs.</summary>
/// <param name="Intercept">In units of log-odds.</param>
/// <param name="OfColumn">In the columns' order; none negative.</param>
public sealed record Costs(double Intercept, double[] OfColumn)
{
    /// <summary>The costs that weights hold for the columns of a family.</summary>
    public static Costs Of(Weights weights, FeatureColumns columns) => new(weights.Intercept, columns.CostsOf(weights));
}
