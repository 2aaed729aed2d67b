using PartsMatch.Ranking;

namespace PartsMatch.Learning;

/// <summary>An outcome as training sees it. It does not hold the need, which is a hundred times as large.</summary>
/// <param name="Columns">The columns that are not 0, rising.</param>
/// <param name="Values">What stands in each of them; above 0.</param>
/// <param name="Id">The outcome's id.</param>
/// <param name="On">The day on which it was known.</param>
/// <param name="Place">Where.</param>
/// <param name="Old">The number of the part whose place it took; empty where nobody knew it.</param>
/// <param name="PartNumber">The number of the part that was put in.</param>
/// <param name="Result">What became of it.</param>
/// <param name="IsInvented">Whether it is demo data, and happened nowhere.</param>
public sealed record Example(int[] Columns, double[] Values, string Id, DateOnly On, string Place, string Old, string PartNumber, Result Result, bool IsInvented = false)
{
    /// <summary>Whether it was right the first time: what a likelihood is the likelihood of.</summary>
    public bool Worked => Result == Result.RightFirstTime;

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
