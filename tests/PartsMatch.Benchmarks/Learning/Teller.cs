using PartsMatch.Learning;
using PartsMatch.Ranking;

namespace PartsMatch.Benchmarks.Learning;

/// <summary>Somebody who puts parts in order, and may tell how likely each is right the first time.</summary>
/// <param name="Name">Who.</param>
/// <param name="ScoreOf">What a part is put in order by, the greatest first; log-odds where likelihoods are told.</param>
/// <param name="TellsLikelihood">Whether it is log-odds.</param>
internal sealed record Teller(string Name, Func<Case, double> ScoreOf, bool TellsLikelihood = true)
{
    public const string Rescaled = "hand-set weights, rescaled";
    public const string Unheld = "logistic, nothing held";
    public const string Trained = "trained";
    public const string Trees = "boosted trees";
    public const string Ceiling = "ceiling of the columns";
    public const string CeilingOfOthers = "ceiling of the columns, old parts that it has not seen";

    /// <summary>In how many goes the latter is found.</summary>
    private const int Goes = 3;

    /// <summary>Those who need no outcomes.</summary>
    public static IReadOnlyList<Teller> Untaught(FeatureColumns columns)
    {
        var byHand = Costs.Of(Weights.HandSet(columns.Family), columns);
        return
        [
            new("by chance", one => Spread(one.Example.PartNumber, one.Example.On), TellsLikelihood: false),
            new("the cheapest first", one => -(double)one.Price, TellsLikelihood: false),
            new("by how many aspects are met", one => one.Met, TellsLikelihood: false),
            new("hand-set weights", one => one.Example.LogOdds(byHand)),
        ];
    }

    /// <summary>Those who learn from examples.</summary>
    public static IReadOnlyList<Teller> Taught(IReadOnlyList<Example> learnt, FeatureColumns columns)
    {
        var share = (learnt.Count(example => example.Worked) + 0.5) / (learnt.Count + 1);
        var (rescaled, trained, plain) = (Model.Rescaled(learnt, columns), Model.Trained(learnt, columns), PenalisedFit.Of(learnt, Prior.None(columns.Count)));
        var trees = Rivals.Trees(learnt, columns.Count);
        return
        [
            new("how many are right, whatever the part", _ => Math.Log(share / (1 - share))),
            new(Rescaled, one => rescaled.LogOdds(one.Example)),
            new(Unheld, one => one.Example.LogOdds(plain)),
            new(Trained, one => trained.LogOdds(one.Example)),
            new(Trees, one => trees(one.Example)),
        ];
    }

    /// <summary>Those who know what no file holds.</summary>
    public static IReadOnlyList<Teller> Knowing(History history, Split split)
    {
        var count = history.Columns.Count;
        var learnt = split.Learnt.Select(one => one.Case).ToList();
        var (columns, parts) = (Rivals.Ceiling(learnt, count), Rivals.Ceiling(learnt, count, example => history.District.QualityOf(example.PartNumber)));
        var others = Enumerable.Range(0, Goes).Select(go => Rivals.Ceiling([.. learnt.Where(one => GoOf(one.Old) != go)], count)).ToList();
        return
        [
            new(Ceiling, one => columns(one.Example)),
            new(CeilingOfOthers, one => others[GoOf(one.Old)](one.Example)),
            new("ceiling of the columns and of every part's own quality", one => parts(one.Example)),
            new("the truth that outcomes were drawn from", one => Math.Log(one.Right / (1 - one.Right))),
        ];
    }

    private static int GoOf(string old) => Folds.Of(old, Goes);

    /// <summary>As good as chance, and the same every time.</summary>
    private static double Spread(string number, DateOnly on) => new Random(Folds.Of(FormattableString.Invariant($"{number} {on:O}"), int.MaxValue)).NextDouble();
}
