namespace PartsMatch.Fit.Judging;

/// <summary>An aspect's finding about one part.</summary>
/// <param name="Aspect">The question.</param>
/// <param name="Finding">The answer.</param>
public sealed record AspectFinding(Aspect Aspect, Finding Finding);

/// <summary>Everything found about one part for one need.</summary>
/// <param name="Findings">One an aspect, in the family's order.</param>
public sealed record FitSheet(IReadOnlyList<AspectFinding> Findings)
{
    /// <summary>Whether the part does the job.</summary>
    public PartFit Fit { get; } = FitOf(Findings);

    /// <summary>All that must be changed or checked, in the family's order.</summary>
    public IEnumerable<Change> Changes => Findings.SelectMany(one => one.Finding.Changes);

    /// <summary>What stands in the way: the aspects that fail.</summary>
    public IEnumerable<AspectFinding> Failures => Findings.Where(one => one.Finding.Verdict == Verdict.Fails);

    /// <summary>The fit that follows from findings: a fail, else an unknown in a deciding aspect, else a change or any unknown, else drop-in.</summary>
    public static PartFit FitOf(IEnumerable<AspectFinding> findings)
    {
        var fit = PartFit.DropIn;
        foreach (var (aspect, finding) in findings)
        {
            var one = FitOf(finding.Verdict, aspect.IsDeciding);
            if (one > fit) fit = one;
        }

        return fit;
    }

    /// <summary>What one verdict lets the whole fit be at best.</summary>
    public static PartFit FitOf(Verdict verdict, bool isDeciding) => verdict switch
    {
        Verdict.Fails => PartFit.DoesntFit,
        Verdict.Unknown when isDeciding => PartFit.CantTellYet,
        Verdict.Unknown or Verdict.MeetsWithChanges => PartFit.FitsWithChanges,
        _ => PartFit.DropIn,
    };
}
