using System.Runtime.CompilerServices;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;

namespace PartsMatch.Learning;

/// <summary>The columns of a family's examples, which are what its weights have a cost for: of every aspect the ramps of its shortfall, its effort and the part's gap, and behind them its pairs.</summary>
public sealed class FeatureColumns
{
    private const int OfAspect = ShortfallCurve.Count + 2;
    private const int EffortAt = ShortfallCurve.Count;
    private const int GapAt = ShortfallCurve.Count + 1;

    private static readonly string[] AspectNames = ["any", "first quarter", "second quarter", "third quarter", "last quarter", "beyond", "effort", "unknown"];

    private readonly Family family;
    private readonly Dictionary<string, int> placeOf;
    private readonly ConditionalWeakTable<Spec, object[]> facetsOf = [];

    /// <summary>The columns of a family.</summary>
    public FeatureColumns(Family family)
    {
        this.family = family;
        placeOf = family.Aspects.Index().ToDictionary(one => one.Item.Name, one => one.Index, StringComparer.Ordinal);
        Names = [.. family.Aspects.SelectMany(aspect => AspectNames.Select(name => $"{aspect.Name}: {name}")), .. family.Pairs.Select(pair => pair.Name)];
    }

    /// <summary>The family.</summary>
    public Family Family => family;

    /// <summary>What each column is.</summary>
    public IReadOnlyList<string> Names { get; }

    /// <summary>How many there are.</summary>
    public int Count => Names.Count;

    /// <summary>An outcome's example; null where the part fails an aspect, in which no cost has a say, or where a reading was open that decides: how far the part fell short was not known.</summary>
    /// <remarks>Safe to call from many threads. What a part's spec comes to is kept as long as the spec is: the same parts are put in again and again.</remarks>
    public Example? ExampleOf(Outcome outcome)
    {
        var facets = facetsOf.GetValue(outcome.Part, FacetsOf);
        Span<double> row = stackalloc double[Count], shortfalls = stackalloc double[family.Aspects.Count];
        row.Clear();
        for (var aspect = 0; aspect < family.Aspects.Count; aspect++)
        {
            var finding = family.Aspects[aspect].JudgeUnread(outcome.Need, facets[aspect]);
            if (finding.Verdict == Verdict.Fails) return null;
            var features = Features.Of(family.Aspects[aspect], finding);
            if (features.OpenReading > 0) return null;
            var of = row.Slice(aspect * OfAspect, OfAspect);
            ShortfallCurve.Climb(features.Shortfall, of[..ShortfallCurve.Count]);
            (of[EffortAt], of[GapAt]) = (features.Effort, features.PartGaps);
            shortfalls[aspect] = finding.Shortfall;
        }

        for (var pair = 0; pair < family.Pairs.Count; pair++)
        {
            row[(family.Aspects.Count * OfAspect) + pair] = PairCost.Share(shortfalls[placeOf[family.Pairs[pair].One]], shortfalls[placeOf[family.Pairs[pair].Other]]);
        }

        var columns = new int[row.Length - row.Count(0)];
        var values = new double[columns.Length];
        for (var (column, at) = (0, 0); column < row.Length; column++)
        {
            if (row[column] > 0) (columns[at], values[at++]) = (column, row[column]);
        }

        return new(columns, values, outcome.Id, outcome.On, outcome.Place, outcome.Old, outcome.PartNumber, outcome.Result, outcome.IsInvented);
    }

    /// <summary>What weights hold for each column.</summary>
    public double[] CostsOf(Weights weights) =>
    [
        .. family.Aspects.Select(aspect => weights.Aspects[aspect.Name]).SelectMany(cost => (double[])[.. cost.Shortfall.Heights, cost.Effort, cost.Unknown]),
        .. weights.Pairs.Select(pair => pair.Cost),
    ];

    /// <summary>Weights with these costs, each no more than weights may hold.</summary>
    /// <param name="origin">Where they come from.</param>
    /// <param name="costs">In the columns' order.</param>
    /// <param name="records">What parts cost by their record.</param>
    /// <param name="madeOn">The day.</param>
    /// <param name="training">What they were trained on.</param>
    public Weights WeightsOf(WeightsOrigin origin, Costs costs, IReadOnlyDictionary<string, double> records, DateOnly madeOn, Training training)
    {
        var held = costs.OfColumn.Select(cost => Math.Min(cost, Weights.MostWeight)).ToArray();
        return Weights.Of(family, new(origin, Math.Clamp(costs.Intercept, -Weights.MostIntercept, Weights.MostIntercept))
        {
            MadeOn = madeOn,
            Aspects = family.Aspects.Index().ToDictionary(one => one.Item.Name, one => AspectCostOf(held.AsSpan(one.Index * OfAspect, OfAspect))),
            Pairs = family.Pairs.Index().ToDictionary(one => one.Item.Name, one => held[(family.Aspects.Count * OfAspect) + one.Index]),
            Records = records,
            Training = training,
        });
    }

    private object[] FacetsOf(Spec part)
    {
        var deduced = family.Deduce(part).Spec;
        return [.. family.Aspects.Select(aspect => aspect.FacetOf(deduced))];
    }

    private static AspectCost AspectCostOf(ReadOnlySpan<double> of) => new(ShortfallCurve.Of(of[..ShortfallCurve.Count].ToArray()), of[EffortAt], of[GapAt]);
}
