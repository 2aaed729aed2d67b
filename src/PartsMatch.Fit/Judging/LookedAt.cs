namespace PartsMatch.Fit.Judging;

/// <summary>The fields that an aspect looks at, the most telling first: what is shown old beside new.</summary>
/// <param name="Spec">Names of fields of the old plate and of the new part alike; empty when it looks at the site alone.</param>
/// <param name="Site">Names of fields of the site; empty when the place is nothing to it.</param>
public sealed record LookedAt(IReadOnlyList<string> Spec, IReadOnlyList<string> Site)
{
    /// <summary>
    /// Names of further fields of the old plate and of the site that its answer may follow from: too many to show, and needed to know which needs it cannot tell apart.
    /// </summary>
    public IReadOnlyList<string> Besides { get; init; } = [];

    /// <summary>Names of all fields of plate and site that its answer may follow from.</summary>
    public IEnumerable<string> All => [.. Spec, .. Site, .. Besides];
}
