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
        var worst = high;
        foreach (var one in lower)
        {
            var (rank, before) = (Rank(one), Rank(worst));
            if (rank > before || (rank == before && one.Verdict != Verdict.Unknown && one.Shortfall > worst.Shortfall)) worst = one;
        }

        return worst.Verdict is Verdict.Fails or Verdict.Unknown ? worst : worst.With(Different([high, .. lower]));
    }

    /// <summary>A failure is worse than an unknown, and that than whatever passes.</summary>
    private static int Rank(Finding one) => one.Verdict switch
    {
        Verdict.Fails => 2,
        Verdict.Unknown => 1,
        _ => 0,
    };

    /// <summary>What all of them ask for, each once. Words are formed only where two ask for changes of one kind.</summary>
    private static List<Change> Different(ReadOnlySpan<Finding> all)
    {
        List<Change> changes = [];
        foreach (var one in all)
        {
            foreach (var change in one.Changes)
            {
                if (!changes.Exists(other => other.Kind == change.Kind && other.Text == change.Text)) changes.Add(change);
            }
        }

        return changes;
    }
}
