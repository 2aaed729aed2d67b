using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Engine;

/// <summary>A finding, and what it means for any part that carries its facet.</summary>
/// <param name="Finding">The aspect's answer.</param>
/// <param name="Fit">What the whole fit is at best.</param>
/// <param name="Contribution">What it takes from the score.</param>
internal sealed record Answer(Finding Finding, PartFit Fit, Score Contribution);

/// <summary>What one query has found out: each distinct facet is judged once, and only when a part asks for it.</summary>
internal sealed class Answers(Catalogue catalogue, Need need, Weights? weights)
{
    private readonly IReadOnlyList<Aspect> aspects = catalogue.Family.Aspects;
    private readonly ByFacet<Answer> known = new(catalogue);

    /// <summary>How many facets were judged.</summary>
    public int Judged { get; private set; }

    /// <summary>The answer about a facet.</summary>
    public Answer At(int aspect, int code) => known.At(aspect, code) ??= Judge(aspect, code);

    /// <summary>All findings about the part in a place, in the family's order.</summary>
    public FitSheet SheetOf(int place) => new([.. aspects.Select((aspect, index) => new AspectFinding(aspect, At(index, catalogue.CodeAt(place, index)).Finding))]);

    private Answer Judge(int aspect, int code)
    {
        Judged++;
        var finding = aspects[aspect].Judge(need, catalogue.Facets[aspect][code]);
        return new(finding, FitSheet.FitOf(finding.Verdict, aspects[aspect].IsDeciding), weights?.Contribution(aspects[aspect], finding) ?? Score.Zero);
    }
}
