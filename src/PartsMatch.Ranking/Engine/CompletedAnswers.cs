using PartsMatch.Fit.Judging;
using PartsMatch.Ranking.Unknowns;

namespace PartsMatch.Ranking.Engine;

/// <summary>What queries about one need with unknowns have found out. For one thread at a time.</summary>
internal sealed class CompletedAnswers(Catalogue catalogue, Answers byNeed, Completions completions, Weights weights)
{
    private readonly ByFacet<CompletedAnswer> known = new(catalogue);
    private readonly CompletedAnswer takesNothing = new(completions, default);

    /// <summary>The catalogue whose facets they are about.</summary>
    public Catalogue Catalogue => catalogue;

    /// <summary>The weights.</summary>
    public Weights Weights => weights;

    /// <summary>The completions.</summary>
    public Completions Completions => completions;

    /// <summary>The answers for the need as it is.</summary>
    public Answers ByNeed => byNeed;

    /// <summary>The answer about what a question reads; where it is not asked, that it passes and takes nothing.</summary>
    public CompletedAnswer At(int question, int code) => byNeed.IsAsked(question) ? known.At(question, code) ??= Asked(question, code) : takesNothing;

    /// <summary>All answers about the part in a place, in the family's order.</summary>
    public IReadOnlyList<CompletedAnswer> AnswersAt(int place) => [.. catalogue.Family.Aspects.Select((_, aspect) =>
    {
        var (question, code) = byNeed.AskedOf(aspect, place);
        return At(question, code);
    })];

    /// <summary>Which completions the part in a place fits for sure: <see cref="CompletedAnswer.Fitting"/>.</summary>
    public ulong FittingAt(int place)
    {
        var fitting = completions.Everything;
        for (var question = 0; question < catalogue.Facets.Length && fitting != 0; question++) fitting = At(question, catalogue.CodeAt(place, question)).Fitting(fitting);
        return fitting;
    }

    /// <summary>The part in a place, explained.</summary>
    public Explained ExplainedAt(int place) => Explained.Of(byNeed.SheetOf(place), AnswersAt(place), completions, weights, catalogue.NumberAt(place));

    /// <summary>What an aspect that looks at nothing open says of the need it says of every completion.</summary>
    private CompletedAnswer Asked(int question, int code)
    {
        var index = catalogue.Questions.IndexOf(question);
        if (weights.IsPaired(index) || !completions.AreAlikeFor(index)) return new(completions, weights, catalogue.Questions.AspectOf(question), index, catalogue.Facets[question][code]);
        var answer = byNeed.At(question, code);
        return answer is { Fit: not PartFit.DoesntFit, Contribution.Millionths: 0 } ? takesNothing : new(completions, answer);
    }
}
