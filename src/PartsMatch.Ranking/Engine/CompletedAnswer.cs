using System.Numerics;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking.Unknowns;

namespace PartsMatch.Ranking.Engine;

/// <summary>What a facet means for a need with unknowns: judged once for each group of completions that its aspect cannot tell apart, and only for those that somebody asks about.</summary>
internal sealed class CompletedAnswer(Aspect aspect, object facet, Completions completions, int[] groups, Weights weights)
{
    private ulong judged;
    private ulong passing;

    /// <summary>Of every completion that was asked about, what the facet takes from the score, in millionths.</summary>
    public long[] Contributions { get; } = new long[groups.Length];

    /// <summary>Which of some completions the facet passes.</summary>
    /// <param name="asked">A bit for every completion that is asked about.</param>
    public ulong Passing(ulong asked)
    {
        for (var left = asked & ~judged; left != 0; left = asked & ~judged) Judge(BitOperations.TrailingZeroCount(left));
        return asked & passing;
    }

    private void Judge(int completion)
    {
        var finding = aspect.Judge(completions.All[completion].Need, facet);
        var contribution = weights.Contribution(aspect, finding).Millionths;
        for (var other = completion; other < groups.Length; other++)
        {
            if (groups[other] != groups[completion]) continue;
            judged |= 1UL << other;
            if (finding.Verdict != Verdict.Fails) passing |= 1UL << other;
            Contributions[other] = contribution;
        }
    }
}
