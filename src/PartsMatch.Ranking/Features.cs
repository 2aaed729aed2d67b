using System.Runtime.InteropServices;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking;

/// <summary>What ranking, and later training, sees of one finding. All are 0 for a part that meets the aspect without a thought.</summary>
/// <param name="Shortfall">0 to <see cref="MostShortfall"/>; 1 is the limit.</param>
/// <param name="Effort">Of its changes together: 1 for about an hour.</param>
/// <param name="PartGaps">1 when the part's own spec lacks what decides it, else 0.</param>
/// <param name="OpenReading">What the missing reading costs when the aspect is deciding and a reading of the plate or site is missing (<see cref="Aspect.OpenReadingPenalty"/>), else 0.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Features(double Shortfall, double Effort, int PartGaps, double OpenReading)
{
    /// <summary>Beyond twice the limit a shortfall says nothing new, and one wild figure shall not drown all others.</summary>
    public const double MostShortfall = 2;

    /// <summary>The features of a finding.</summary>
    /// <remarks>It is asked as often as a facet is judged: no enumerator, and nothing is looked for where there is none. What meets as it is asks for no change, and only an unknown lacks something.</remarks>
    public static Features Of(Aspect aspect, Finding finding)
    {
        var shortfall = Math.Clamp(finding.Shortfall, 0, MostShortfall);
        var isUnknown = finding.Verdict == Verdict.Unknown;
        return new(
            shortfall,
            isUnknown || finding.Verdict == Verdict.MeetsWithChanges ? EffortOf(finding.Changes) : 0,
            isUnknown && Lacks(finding.Missing, ofPart: true) ? 1 : 0,
            isUnknown && aspect.IsDeciding && Lacks(finding.Missing, ofPart: false) ? aspect.OpenReadingPenalty : 0);
    }

    /// <summary>What they take from the score.</summary>
    /// <param name="cost">What each feature costs; the open reading's cost is fixed.</param>
    public Score Under(AspectCost cost) => Score.Less(
        cost.Shortfall.At(Shortfall) + (Effort * cost.Effort) + (PartGaps * cost.Unknown) + OpenReading);

    private static double EffortOf(IReadOnlyList<Change> changes)
    {
        var effort = 0.0;
        for (var at = 0; at < changes.Count; at++) effort += changes[at].Kind.Effort;
        return effort;
    }

    private static bool Lacks(IReadOnlyList<Missing> missing, bool ofPart)
    {
        for (var at = 0; at < missing.Count; at++)
        {
            if (missing[at].Side == Side.Part == ofPart) return true;
        }

        return false;
    }
}
