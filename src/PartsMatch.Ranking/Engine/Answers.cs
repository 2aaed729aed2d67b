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
    /// <summary>Up to so many facets of an aspect, their answers stand in an array; of more, few are asked for.</summary>
    private const int MostInArray = 2048;

    private readonly IReadOnlyList<Aspect> aspects = catalogue.Family.Aspects;
    private readonly Answer?[]?[] few = new Answer?[]?[catalogue.Facets.Length];
    private readonly Dictionary<int, Answer>?[] many = new Dictionary<int, Answer>?[catalogue.Facets.Length];

    /// <summary>How many facets were judged.</summary>
    public int Judged { get; private set; }

    /// <summary>The answer about a facet.</summary>
    public Answer At(int aspect, int code)
    {
        if (few[aspect] is { } answers) return answers[code] ??= Judge(aspect, code);
        if (many[aspect] is { } known) return known.TryGetValue(code, out var answer) ? answer : known[code] = Judge(aspect, code);
        var count = catalogue.Facets[aspect].Count;
        if (count <= MostInArray) few[aspect] = new Answer?[count];
        else many[aspect] = [];
        return At(aspect, code);
    }

    /// <summary>All findings about the part in a place, in the family's order.</summary>
    public FitSheet SheetOf(int place) => new([.. aspects.Select((aspect, index) => new AspectFinding(aspect, At(index, catalogue.CodeAt(place, index)).Finding))]);

    private Answer Judge(int aspect, int code)
    {
        Judged++;
        var finding = aspects[aspect].Judge(need, catalogue.Facets[aspect][code]);
        return new(finding, FitSheet.FitOf(finding.Verdict, aspects[aspect].IsDeciding), weights?.Contribution(aspects[aspect], finding) ?? Score.Zero);
    }
}
