using PartsMatch.Fit.Judging;
using PartsMatch.Ranking.Engine;
using PartsMatch.Ranking.Unknowns;

namespace PartsMatch.Ranking;

/// <summary>What an aspect, a pair of aspects or a part's own record takes from its score.</summary>
/// <param name="Name">The aspect's or the pair's name, or <see cref="Record"/>.</param>
/// <param name="Title">A few words for it.</param>
/// <param name="Amount">Never positive.</param>
/// <param name="Aspect">The aspect; null of anything else.</param>
public sealed record Contribution(string Name, string Title, Score Amount, Aspect? Aspect)
{
    /// <summary>The name of what a part's record takes.</summary>
    public const string Record = "partRecord";

    /// <summary>What an aspect takes.</summary>
    internal static Contribution Of(Aspect aspect, Score amount) => new(aspect.Name, aspect.Title, amount, aspect);
}

/// <summary>One part judged and scored: the rule that ranks is the rule that explains.</summary>
/// <param name="Sheet">All findings.</param>
/// <param name="Contributions">One an aspect, in the family's order; a failed aspect's is zero, since it is a gate. Behind them what pairs of aspects and the part's record take, where they take anything. They sum exactly to the score. Of a need with unknowns, the mean over the completions that the part passes.</param>
/// <param name="Score">The sum.</param>
/// <param name="Likelihood">Null when an aspect fails: such a part has none.</param>
public sealed record Explained(FitSheet Sheet, IReadOnlyList<Contribution> Contributions, Score Score, Likelihood? Likelihood)
{
    /// <summary>Explains findings under weights.</summary>
    /// <param name="sheet">The findings.</param>
    /// <param name="weights">The weights.</param>
    /// <param name="number">The part's number; null of one that has none.</param>
    internal static Explained Of(FitSheet sheet, Weights weights, string? number)
    {
        List<Contribution> contributions =
        [
            .. sheet.Findings.Select(one => Contribution.Of(one.Aspect, weights.Contribution(one.Aspect, one.Finding))),
            .. Besides(sheet, weights, number, pair => PartTerms.Of(pair, sheet.Findings[pair.One].Finding, sheet.Findings[pair.Other].Finding)),
        ];
        var score = contributions.Aggregate(Score.Zero, (sum, one) => sum + one.Amount);
        return new(sheet, contributions, score, sheet.Fit == PartFit.DoesntFit ? null : weights.LikelihoodOf(score));
    }

    /// <summary>Explains findings about a need with unknowns.</summary>
    /// <param name="sheet">The findings for the need as it is.</param>
    /// <param name="answers">Of every aspect, what its facet means for the completions.</param>
    /// <param name="completions">The completions; there are some.</param>
    /// <param name="weights">The weights.</param>
    /// <param name="number">The part's number; null of one that has none.</param>
    internal static Explained Of(FitSheet sheet, IReadOnlyList<CompletedAnswer> answers, Completions completions, Weights weights, string? number)
    {
        var passing = answers.Aggregate(completions.Everything, (asked, answer) => answer.Passing(asked));
        List<(int Index, int Weight)> passed = [.. completions.All.Select((completion, index) => (index, completion.Weight)).Where(one => (passing >> one.index & 1) == 1)];
        var sum = passed.Sum(one => one.Weight * weights.ShareOf(new Score(answers.Sum(answer => answer.ContributionOf(one.Index))) + PartTerms.Of(weights, answers, one.Index, number)));
        var likelihood = sheet.Fit == PartFit.DoesntFit ? null : weights.Shown(new MeanLikelihood(sum, completions.Weight).Percent, completions.Machines);

        // A part that no completion passes has nothing to take a mean of: it is explained by the need as it is.
        if (passed.Count == 0 || likelihood is null) return Of(sheet, weights, number) with { Likelihood = likelihood };
        var weight = passed.Sum(one => one.Weight);
        List<Contribution> contributions =
        [
            .. sheet.Findings.Zip(answers, (one, answer) => Contribution.Of(one.Aspect, Mean(each => answer.ContributionOf(each)))),
            .. Besides(sheet, weights, number, pair => Mean(each => PartTerms.Of(pair, answers, each).Millionths)),
        ];
        return new(sheet, contributions, contributions.Aggregate(Score.Zero, (score, one) => score + one.Amount), likelihood);

        Score Mean(Func<int, long> ofCompletion) => new((long)Math.Round(passed.Sum(each => each.Weight * ofCompletion(each.Index)) / (double)weight));
    }

    /// <summary>What belongs to no aspect alone, where it takes anything.</summary>
    private static IEnumerable<Contribution> Besides(FitSheet sheet, Weights weights, string? number, Func<PairCost, Score> take)
    {
        foreach (var pair in weights.Pairs.Where(pair => pair.Cost > 0))
        {
            if (take(pair) is { Millionths: < 0 } amount) yield return new(pair.Pair.Name, $"{TitleAt(pair.One)} and {TitleAt(pair.Other)} together", amount, null);
        }

        if (number is not null && weights.RecordOf(number) is { Millionths: < 0 } record) yield return new(Contribution.Record, "The part's record", record, null);

        string TitleAt(int aspect) => sheet.Findings[aspect].Aspect.Title;
    }
}
