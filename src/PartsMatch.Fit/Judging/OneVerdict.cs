namespace PartsMatch.Fit.Judging;

/// <summary>What several possible values of something unknown come to.</summary>
internal static class OneVerdict
{
    /// <summary>The least favourable of the findings when all have the same verdict; else the unknown.</summary>
    /// <param name="possible">The finding for each possible value; at least one.</param>
    /// <param name="unknown">What to say when they differ.</param>
    public static Finding Of(IEnumerable<Finding> possible, Func<Finding> unknown)
    {
        var all = possible.ToList();
        return all.TrueForAll(finding => finding.Verdict == all[0].Verdict) ? all.MaxBy(finding => finding.Shortfall)! : unknown();
    }
}
