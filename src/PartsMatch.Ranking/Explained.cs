using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking;

/// <summary>What one aspect takes from a part's score.</summary>
/// <param name="Aspect">The aspect.</param>
/// <param name="Amount">Never positive.</param>
public sealed record Contribution(Aspect Aspect, Score Amount);

/// <summary>One part judged and scored: the rule that ranks is the rule that explains.</summary>
/// <param name="Sheet">All findings.</param>
/// <param name="Contributions">One an aspect, in the family's order; a failed aspect's is zero, since it is a gate. They sum exactly to the score.</param>
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
}
