using PartsMatch.Fit.Judging;
using PartsMatch.Ranking.Unknowns;

namespace PartsMatch.Ranking.Engine;

/// <summary>What a facet means for a need with unknowns.</summary>
/// <param name="Passing">A bit for every completion whose need the facet does not fail.</param>
/// <param name="Contributions">Of every completion, what the facet takes from the score, in millionths.</param>
internal sealed record CompletedAnswer(ulong Passing, long[] Contributions)
{
    /// <summary>Judges a facet once for each group of completions that its aspect cannot tell apart.</summary>
    public static CompletedAnswer Of(Aspect aspect, object facet, Completions completions, int[] groups, Weights weights)
    {
        var (byGroup, passing, contributions) = (new List<(bool Passes, long Contribution)>(), 0UL, new long[groups.Length]);
        for (var completion = 0; completion < groups.Length; completion++)
        {
            if (groups[completion] == byGroup.Count)
            {
                var finding = aspect.Judge(completions.All[completion].Need, facet);
                byGroup.Add((finding.Verdict != Verdict.Fails, weights.Contribution(aspect, finding).Millionths));
            }

            var answer = byGroup[groups[completion]];
            if (answer.Passes) passing |= 1UL << completion;
            contributions[completion] = answer.Contribution;
        }

        return new(passing, contributions);
    }
}

/// <summary>What one query with unknowns has found out: each distinct facet is judged once, and only when a part asks for it.</summary>
internal sealed class CompletedAnswers(Catalogue catalogue, Answers byNeed, Completions completions, Weights weights)
{
    private readonly Dictionary<int, CompletedAnswer>[] known = [.. catalogue.Facets.Select(_ => new Dictionary<int, CompletedAnswer>())];

    /// <summary>The completions.</summary>
    public Completions Completions => completions;

    /// <summary>A bit for every completion.</summary>
    public ulong Everything => ulong.MaxValue >> (Completions.Most - completions.All.Count);

    /// <summary>The fit at best of any part that carries a facet, for the need as it is.</summary>
    public PartFit FitAt(int aspect, int code) => byNeed.At(aspect, code).Fit;

    /// <summary>The answer about a facet.</summary>
    public CompletedAnswer At(int aspect, int code) => known[aspect].TryGetValue(code, out var answer)
        ? answer
        : known[aspect][code] = CompletedAnswer.Of(catalogue.Family.Aspects[aspect], catalogue.Facets[aspect][code], completions, completions.GroupsByAspect[aspect], weights);

    /// <summary>All answers about the part in a place, in the family's order.</summary>
    public IReadOnlyList<CompletedAnswer> AnswersAt(int place) => [.. catalogue.Facets.Select((_, aspect) => At(aspect, catalogue.CodeAt(place, aspect)))];

    /// <summary>The part in a place, explained.</summary>
    public Explained ExplainedAt(int place) => Explained.Of(byNeed.SheetOf(place), AnswersAt(place), completions, weights);
}
