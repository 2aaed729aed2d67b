using PartsMatch.Benchmarks.Motors;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;

namespace PartsMatch.Benchmarks.Engine;

/// <summary>What is to be shown: it judges within its time. Its answers explain themselves when they are asked to, which is not measured.</summary>
internal sealed class EngineUnderTest(Family family, Weights weights, ManyMotors motors) : Contender("engine")
{
    private readonly Catalogue catalogue = Catalogue.Of(family, motors.Parts)
        .WithStock(Enumerable.Range(0, motors.Count).Select(row => KeyValuePair.Create(ManyMotors.NumberAt(row), motors.StockAt(row))));

    private EngineFigures figures;

    public override double? BytesAPart => (double)catalogue.Figures.RowBytes / motors.Count;

    public override EngineFigures? Figures => figures;

    public override IReadOnlyList<int> Best(Asked asked)
    {
        var page = (RankingPage.Listed)Ranker.Rank(catalogue, weights, new(asked.Need, Include: null, First, After: null));
        figures = new(page.FacetsJudged, page.RowsTouched);
        return [.. page.Parts.Select(part => ManyMotors.RowOf(part.Number))];
    }
}
