using PartsMatch.Benchmarks.Parts;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;

namespace PartsMatch.Benchmarks.Engine;

/// <summary>What is to be shown: it judges within its time. Its answers explain themselves when they are asked to, which is not measured.</summary>
/// <param name="name">What it is called.</param>
/// <param name="catalogue">The parts.</param>
/// <param name="weights">What their shortcomings cost.</param>
/// <param name="toAsk">The need as it is asked.</param>
internal sealed class EngineUnderTest(string name, Catalogue catalogue, Weights weights, Func<Need, Need> toAsk) : Contender(name)
{
    private const int WarmUps = 5;

    private EngineFigures figures;
    private IReadOnlyList<Asked> others = [];
    private int last;

    public override double? BytesAPart => (double)catalogue.Figures.RowBytes / catalogue.Offered;

    public override EngineFigures? Figures => figures;

    /// <summary>The engine twice: what follows from the need alone (its fan's load, its fuse) is known when a program has looked at the need once, as every edge does before it ranks; or it is worked out as well.</summary>
    public static IEnumerable<EngineUnderTest> Both(Catalogue catalogue, Weights weights) =>
        [new("engine", catalogue, weights, need => need), new("engine, need never looked at", catalogue, weights, need => need with { })];

    /// <summary>The parts and their stock.</summary>
    public static Catalogue Load(ManyParts parts) => Catalogue.Of(parts.Family, parts.Parts)
        .WithStock(Enumerable.Range(0, parts.Count).Select(row => KeyValuePair.Create(ManyParts.NumberAt(row), parts.StockAt(row))));

    public override void WarmUp(IReadOnlyList<Asked> all)
    {
        for (var time = 0; time < WarmUps; time++)
        {
            foreach (var one in all) Best(one);
        }

        others = all;
    }

    /// <summary>Answers another need: what the one to be measured looks at is not at hand.</summary>
    public override void Resume(Asked asked)
    {
        last = (last + 1) % others.Count;
        if (others[last] == asked) last = (last + 1) % others.Count;
        Best(others[last]);
    }

    public override IReadOnlyList<int> Best(Asked asked)
    {
        var page = (RankingPage.Listed)Ranker.Rank(catalogue, weights, new(toAsk(asked.Need), Include: null, First, After: null));
        figures = new(page.FacetsJudged, page.RowsTouched);
        return [.. page.Parts.Select(part => ManyParts.RowOf(part.Number))];
    }
}
