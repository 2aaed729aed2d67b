using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Engine;

/// <summary>What is taken from a part's score that belongs to no aspect alone: pairs of aspects, and the part's own record. Never positive, so that what aspects leave of the score bounds the whole.</summary>
internal static class PartTerms
{
    /// <summary>What a pair takes; nothing where one of the two fails, which is a gate.</summary>
    public static Score Of(PairCost pair, Finding one, Finding other) =>
        one.Verdict == Verdict.Fails || other.Verdict == Verdict.Fails ? Score.Zero : Score.Less(pair.Cost * PairCost.Share(one.Shortfall, other.Shortfall));

    /// <summary>What a pair takes for one completion.</summary>
    public static Score Of(PairCost pair, IReadOnlyList<CompletedAnswer> answers, int completion) =>
        Score.Less(pair.Cost * PairCost.Share(answers[pair.One].ShortfallOf(completion), answers[pair.Other].ShortfallOf(completion)));

    /// <summary>All that is taken for one completion.</summary>
    public static Score Of(Weights weights, IReadOnlyList<CompletedAnswer> answers, int completion, string? number)
    {
        var sum = number is null ? Score.Zero : weights.RecordOf(number);
        foreach (var pair in weights.Pairs)
        {
            if (pair.Cost > 0) sum += Of(pair, answers, completion);
        }

        return sum;
    }
}
