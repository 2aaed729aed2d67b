using PartsMatch.Benchmarks.Motors;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;

namespace PartsMatch.Benchmarks.Engine;

/// <summary>What is to be shown: it judges within its time, and explains every part of its answer.</summary>
internal sealed class EngineUnderTest(Family family, Weights weights, ManyMotors motors) : Contender("engine")
{
    private readonly Catalogue catalogue = Catalogue.Of(family, motors.Parts);
    private readonly Dictionary<string, Stock> stock = Enumerable.Range(0, motors.Count).ToDictionary(ManyMotors.NumberAt, motors.StockAt);

    public override IReadOnlyList<int> Best(Asked asked) => [.. Rank(asked.Need).Select(ranked => ManyMotors.RowOf(ranked.Part.Number))];

    private IReadOnlyList<RankedPart> Rank(Need need) => ((RankingPage.Listed)Ranker.Rank(catalogue, weights, stock, new(need, Include: null, First, After: null))).Parts;
}
