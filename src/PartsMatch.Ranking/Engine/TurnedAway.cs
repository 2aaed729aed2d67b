using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Engine;

/// <summary>How many parts each aspect turns away: some of the parts are taken for failed ones, and the others for what may replace them.</summary>
internal static class TurnedAway
{
    /// <summary>So many are taken, which tells a share to some hundredths; judged are as many times as many in every aspect, some tens of milliseconds.</summary>
    public const int Sample = 24;

    /// <summary>Of fewer parts than this, the order in which they are asked is nothing to anyone.</summary>
    public const int LeastParts = 1000;

    /// <summary>What takes more than this from the score shows less than what waits with nothing to say against it, and is not looked at soon.</summary>
    private const double SetBack = 0.2;

    /// <summary>Of every aspect, how many of 1,000.</summary>
    /// <param name="family">The family.</param>
    /// <param name="specs">The sample.</param>
    public static int[] Of(Family family, IReadOnlyList<Spec> specs)
    {
        var anywhere = family.ReadSite([]).Site;
        List<Spec> deduced = [.. specs.Select(spec => family.Deduce(spec).Spec)];
        List<Need> needs = [.. deduced.Select(spec => family.Complete(new(spec, anywhere), spec) with { Plate = spec })];
        return [.. family.Aspects.AsParallel().AsOrdered().Select(aspect =>
        {
            List<object> facets = [.. deduced.Select(aspect.FacetOf)];
            return 1000 * needs.Sum(need => facets.Count(facet => IsTurnedAway(aspect, aspect.JudgeUnread(need, facet)))) / Math.Max(1, needs.Count * facets.Count);
        })];
    }

    private static bool IsTurnedAway(Aspect aspect, Finding finding) =>
        finding.Verdict == Verdict.Fails || -Features.Of(aspect, finding).Under(Weights.HandSetOf(aspect)).Value > SetBack;
}
