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

    /// <summary>One sentence for whoever hands the part out: what must be changed on it, what checked, or why not.</summary>
    public string Summary => Fit switch
    {
        PartFit.DoesntFit => $"It does not fit: {Listed(Failures.Select(one => one.Aspect.Title))}.",
        PartFit.DropIn => "Nothing needs changing.",
        _ => $"{Asked("Change", change => !change.Kind.IsCheck) ?? "Nothing needs changing"}{Then(Asked("check", change => change.Kind.IsCheck))}{Then(Open)}.",
    };

    /// <summary>What nobody knows yet: it decides, or is to be checked.</summary>
    private string? Open
    {
        get
        {
            var unknown = Findings.Where(one => one.Finding.Verdict == Verdict.Unknown).ToList();
            return unknown.Count == 0 ? null : $"{(Fit == PartFit.CantTellYet ? "not known yet" : "to be seen")}: {Listed(unknown.Select(one => one.Aspect.Title))}";
        }
    }

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

    private string? Asked(string verb, Func<Change, bool> which)
    {
        var asked = Findings.Where(one => one.Finding.Changes.Any(which))
            .Select(one => $"{one.Aspect.Title} ({string.Join("; ", one.Finding.Changes.Where(which).Select(change => change.Text))})").ToList();
        return asked.Count == 0 ? null : $"{verb} {Listed(asked)}";
    }

    private static string Then(string? clause) => clause is null ? string.Empty : $"; {clause}";

    private static string Listed(IEnumerable<string> titles) => string.Join(", ", titles.Select(InSentence.Of));
}
