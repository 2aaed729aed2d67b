using System.Numerics;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking.Unknowns;

namespace PartsMatch.Ranking.Engine;

/// <summary>What a facet means for a need with unknowns: judged once for each group of completions that its aspect cannot tell apart, and only for those that somebody asks about.</summary>
internal sealed class CompletedAnswer
{
    private readonly Completions completions;

    /// <summary>What is judged; none where the answer for all completions was known from the start.</summary>
    private readonly (Aspect Aspect, object Facet, Weights Weights)? asked;

    private readonly ulong[] groups = [];
    private readonly double[] shortfalls = [];
    private long[]? contributions;
    private ulong judged;
    private ulong passing;
    private ulong open;
    private ulong taking;

    /// <summary>Nothing is judged yet.</summary>
    /// <param name="completions">The completions.</param>
    /// <param name="weights">What shortcomings cost.</param>
    /// <param name="aspect">The aspect.</param>
    /// <param name="index">Its place in the family's order.</param>
    /// <param name="facet">The facet.</param>
    public CompletedAnswer(Completions completions, Weights weights, Aspect aspect, int index, object facet)
    {
        (this.completions, asked, groups) = (completions, (aspect, facet, weights), completions.GroupsByAspect[index]);
        if (weights.IsPaired(index)) shortfalls = new double[groups.Length];
    }

    /// <summary>What holds for all completions alike, and has no shortfall that anybody asks for.</summary>
    /// <param name="completions">The completions.</param>
    /// <param name="answer">What holds.</param>
    public CompletedAnswer(Completions completions, Answer answer)
    {
        this.completions = completions;
        Take(completions.Everything, answer.Fit != PartFit.DoesntFit, answer.Fit == PartFit.CantTellYet, answer.Contribution.Millionths);
    }

    /// <summary>Which of some completions the facet passes.</summary>
    /// <param name="asked">A bit for every completion that is asked about.</param>
    public ulong Passing(ulong asked)
    {
        for (var left = asked & ~judged; left != 0; left = asked & ~judged) Judge(BitOperations.TrailingZeroCount(left));
        return asked & passing;
    }

    /// <summary>Which of some completions the facet surely passes: where its deciding aspect cannot be answered, those alone whose old part it cannot tell from this one.</summary>
    /// <param name="asked">A bit for every completion that is asked about.</param>
    public ulong Fitting(ulong asked) => Passing(asked) & ~open;

    /// <summary>Whether the facet takes anything from the score of any of some completions that were asked about.</summary>
    public bool TakesFrom(ulong asked) => (taking & asked) != 0;

    /// <summary>What the facet takes from the score for a completion that was asked about, in millionths.</summary>
    public long ContributionOf(int completion) => contributions is null ? 0 : contributions[completion];

    /// <summary>How far the facet falls short for a completion that was asked about.</summary>
    public double ShortfallOf(int completion) => shortfalls[completion];

    private void Judge(int completion)
    {
        var (aspect, facet, weights) = asked!.Value;
        var finding = aspect.JudgeUnread(completions.All[completion].Need, facet);
        var group = groups[completion];
        var fit = FitSheet.FitOf(finding.Verdict, aspect.IsDeciding);
        Take(group, fit != PartFit.DoesntFit, fit == PartFit.CantTellYet && !IsAsTheOld(completion), weights.Contribution(aspect, finding).Millionths);
        if (shortfalls.Length == 0) return;
        for (var left = group; left != 0; left &= left - 1) shortfalls[BitOperations.TrailingZeroCount(left)] = finding.Shortfall;
    }

    /// <summary>Whether the old part of a completion has the same facet: then what is not known of the place is nothing that tells the new one from it.</summary>
    private bool IsAsTheOld(int completion)
    {
        var (aspect, facet, _) = asked!.Value;
        return aspect.GistOf(aspect.FacetOf(completions.All[completion].Need.Plate)).Equals(aspect.GistOf(facet));
    }

    private void Take(ulong group, bool passes, bool isOpen, long contribution)
    {
        judged |= group;
        if (passes) passing |= group;
        if (isOpen) open |= group;

        // Most facets take nothing from any.
        if (contribution == 0) return;
        taking |= group;
        contributions ??= new long[completions.All.Count];
        for (var left = group; left != 0; left &= left - 1) contributions[BitOperations.TrailingZeroCount(left)] = contribution;
    }
}
