using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Capacitors;

/// <summary>The words of capacitors' cans.</summary>
public static class CapacitorVocabulary
{
    /// <summary>All of them.</summary>
    public static Vocabulary All { get; } = new([], []);
}
