namespace PartsMatch.Fit.Judging;

/// <summary>How far a rule or figure was confirmed.</summary>
public enum SourceStatus
{
    /// <summary>Seen in a published page or file.</summary>
    Published,

    /// <summary>Known from memory, not seen.</summary>
    Memory,

    /// <summary>Common practice without a published source.</summary>
    Practice,

    /// <summary>Follows from geometry or arithmetic.</summary>
    Derived,
}

/// <summary>Where a rule or figure comes from.</summary>
/// <param name="Text">The standard and clause, or what the practice is.</param>
/// <param name="Status">How far it was confirmed.</param>
public sealed record Source(string Text, SourceStatus Status)
{
    /// <inheritdoc/>
    public override string ToString() => Status switch
    {
        SourceStatus.Memory => $"{Text} (from memory)",
        SourceStatus.Practice => $"{Text} (practice)",
        _ => Text,
    };
}
