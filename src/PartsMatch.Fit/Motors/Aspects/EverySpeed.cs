using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the findings at each speed in use come to.</summary>
internal static class EverySpeed
{
    /// <summary>The worst: a speed at which the part fails, else one at which something is unknown, else the one with the greatest shortfall, with what every speed asks to change.</summary>
    /// <param name="high">At high speed; it stands where the others are no worse.</param>
    /// <param name="lower">At each lower speed that can be judged.</param>
    public static Finding Of(Finding high, IEnumerable<Finding> lower)
    {
        Finding[] all = [high, .. lower];
        if (all.Length == 1) return high;
        if (all.Where(one => one.Verdict == Verdict.Fails).MaxBy(one => one.Shortfall) is { } failing) return failing;
        if (Array.Find(all, one => one.Verdict == Verdict.Unknown) is { } open) return open;
        return all.MaxBy(one => one.Shortfall)!.With([.. all.SelectMany(one => one.Changes).DistinctBy(change => (change.Kind, change.Text))]);
    }
}
