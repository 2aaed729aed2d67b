using PartsMatch.Ranking.Unknowns;

namespace PartsMatch.Ranking.Engine;

/// <summary>What queries about one need with unknowns have found out. For one thread at a time.</summary>
internal sealed class CompletedAnswers(Catalogue catalogue, Answers byNeed, Completions completions, Weights weights)
{
    private readonly ByFacet<CompletedAnswer> known = new(catalogue);

    /// <summary>The catalogue whose facets they are about.</summary>
    public Catalogue Catalogue => catalogue;

    /// <summary>The weights.</summary>
    public Weights Weights => weights;

    /// <summary>The completions.</summary>
    public Completions Completions => completions;

    /// <summary>The answers for the need as it is.</summary>
    public Answers ByNeed => byNeed;

    /// <summary>The answer about a facet.</summary>
    public CompletedAnswer At(int aspect, int code) => known.At(aspect, code) ??= completions.Answer(catalogue.Family.Aspects[aspect], aspect, catalogue.Facets[aspect][code], weights);

    /// <summary>All answers about the part in a place, in the family's order.</summary>
    public IReadOnlyList<CompletedAnswer> AnswersAt(int place) => [.. catalogue.Facets.Select((_, aspect) => At(aspect, catalogue.CodeAt(place, aspect)))];

    /// <summary>Which completions the part in a place passes.</summary>
    public ulong PassingAt(int place)
    {
        var passing = completions.Everything;
        for (var aspect = 0; aspect < catalogue.Facets.Length && passing != 0; aspect++) passing = At(aspect, catalogue.CodeAt(place, aspect)).Passing(passing);
        return passing;
    }

    /// <summary>The part in a place, explained.</summary>
    public Explained ExplainedAt(int place) => Explained.Of(byNeed.SheetOf(place), AnswersAt(place), completions, weights);
}
