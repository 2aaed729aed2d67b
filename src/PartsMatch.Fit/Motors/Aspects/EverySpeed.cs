using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the findings at each speed in use come to.</summary>
internal static class EverySpeed
{
    /// <summary>The worst: a speed at which the part fails, else one at which something is unknown, else the one with the greatest shortfall, with what every speed asks to change.</summary>
    /// <param name="high">At high speed; it stands where the others are no worse.</param>
    /// <param name="lower">At each lower speed that can be judged.</param>
    public static Finding Of(Finding high, IReadOnlyCollection<Finding> lower)
    {
        if (lower.Count == 0) return high;
        Finding[] all = [high, .. lower];
        if (all.Where(one => one.Verdict == Verdict.Fails).MaxBy(one => one.Shortfall) is { } failing) return failing;
        if (Array.Find(all, one => one.Verdict == Verdict.Unknown) is { } open) return open;
        return all.MaxBy(one => one.Shortfall)!.With(Different(all));
    }

    /// <summary>What all of them ask for, each once. Words are formed only where two ask for changes of one kind.</summary>
    private static List<Change> Different(Finding[] all)
    {
        List<Change> changes = [];
        foreach (var change in all.SelectMany(one => one.Changes))
        {
            if (!changes.Exists(one => one.Kind == change.Kind && one.Text == change.Text)) changes.Add(change);
        }

        return changes;
    }
}
