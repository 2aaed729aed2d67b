using PartsMatch.Fit.Judging;
using PartsMatch.Ranking.Engine;
using PartsMatch.Ranking.Unknowns;

namespace PartsMatch.Ranking;

/// <summary>What one aspect takes from a part's score.</summary>
/// <param name="Aspect">The aspect.</param>
/// <param name="Amount">Never positive.</param>
public sealed record Contribution(Aspect Aspect, Score Amount);

/// <summary>One part judged and scored: the rule that ranks is the rule that explains.</summary>
/// <param name="Sheet">All findings.</param>
/// <param name="Contributions">One an aspect, in the family's order; a failed aspect's is zero, since it is a gate. They sum exactly to the score. Of a need with unknowns, the mean over the completions that the part passes.</param>
/// <param name="Score">The sum.</param>
/// <param name="Likelihood">Null when an aspect fails: such a part has none.</param>
public sealed record Explained(FitSheet Sheet, IReadOnlyList<Contribution> Contributions, Score Score, Likelihood? Likelihood)
{
    /// <summary>Explains findings under weights.</summary>
    internal static Explained Of(FitSheet sheet, Weights weights)
    {
        List<Contribution> contributions = [.. sheet.Findings.Select(one => new Contribution(one.Aspect, weights.Contribution(one.Aspect, one.Finding)))];
        var score = contributions.Aggregate(Score.Zero, (sum, one) => sum + one.Amount);
        return new(sheet, contributions, score, sheet.Fit == PartFit.DoesntFit ? null : weights.LikelihoodOf(score));
    }

    /// <summary>Explains findings about a need with unknowns.</summary>
    /// <param name="sheet">The findings for the need as it is.</param>
    /// <param name="answers">Of every aspect, what its facet means for the completions.</param>
    /// <param name="completions">The completions; there are some.</param>
    /// <param name="weights">The weights.</param>
    internal static Explained Of(FitSheet sheet, IReadOnlyList<CompletedAnswer> answers, Completions completions, Weights weights)
    {
        var passing = answers.Aggregate(completions.Everything, (asked, answer) => answer.Passing(asked));
        List<(int Index, int Weight)> passed = [.. completions.All.Select((completion, index) => (index, completion.Weight)).Where(one => (passing >> one.index & 1) == 1)];
        var sum = passed.Sum(one => one.Weight * weights.ShareOf(new(answers.Sum(answer => answer.Contributions[one.Index]))));
        var likelihood = sheet.Fit == PartFit.DoesntFit ? null : weights.Shown(new MeanLikelihood(sum, completions.Machines).Percent, completions.Machines);

        // A part that no completion passes has nothing to take a mean of: it is explained by the need as it is.
        if (passed.Count == 0 || likelihood is null) return Of(sheet, weights) with { Likelihood = likelihood };
        var machines = passed.Sum(one => one.Weight);
        List<Contribution> contributions = [.. sheet.Findings.Zip(answers, (one, answer) =>
            new Contribution(one.Aspect, new((long)Math.Round(passed.Sum(each => each.Weight * answer.Contributions[each.Index]) / (double)machines))))];
        return new(sheet, contributions, contributions.Aggregate(Score.Zero, (score, one) => score + one.Amount), likelihood);
    }
}
