using System.Numerics;

namespace PartsMatch.Ranking.Engine;

/// <summary>What a facet means for a need with unknowns: judged once for each group of completions that its aspect cannot tell apart, and only for those that somebody asks about.</summary>
/// <param name="judge">Tells of a completion whether the facet passes it, what it takes from the score, in millionths, and how far it falls short.</param>
/// <param name="groups">Which completions are judged alike.</param>
/// <param name="isPaired">Whether anybody will ask how far it falls short.</param>
internal sealed class CompletedAnswer(Func<int, (bool Passes, long Contribution, double Shortfall)> judge, int[] groups, bool isPaired)
{
    private readonly double[] shortfalls = isPaired ? new double[groups.Length] : [];
    private long[]? contributions;
    private ulong judged;
    private ulong passing;
    private ulong taking;

    /// <summary>Which of some completions the facet passes.</summary>
    /// <param name="asked">A bit for every completion that is asked about.</param>
    public ulong Passing(ulong asked)
    {
        for (var left = asked & ~judged; left != 0; left = asked & ~judged) Judge(BitOperations.TrailingZeroCount(left));
        return asked & passing;
    }

    /// <summary>Whether the facet takes anything from the score of any of some completions that were asked about.</summary>
    public bool TakesFrom(ulong asked) => (taking & asked) != 0;

    /// <summary>What the facet takes from the score for a completion that was asked about, in millionths.</summary>
    public long ContributionOf(int completion) => contributions is null ? 0 : contributions[completion];

    /// <summary>How far the facet falls short for a completion that was asked about.</summary>
    public double ShortfallOf(int completion) => shortfalls[completion];

    private void Judge(int completion)
    {
        var (passes, contribution, shortfall) = judge(completion);

        // Most facets take nothing from any.
        if (contribution != 0) contributions ??= new long[groups.Length];
        for (var other = completion; other < groups.Length; other++)
        {
            if (groups[other] != groups[completion]) continue;
            judged |= 1UL << other;
            if (passes) passing |= 1UL << other;
            if (contribution != 0)
            {
                taking |= 1UL << other;
                contributions![other] = contribution;
            }

            if (isPaired) shortfalls[other] = shortfall;
        }
    }
}
