using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors;

/// <summary>The words of motors' plates.</summary>
public static class MotorVocabulary
{
    /// <summary>All of them.</summary>
    public static Vocabulary All { get; } = new([], []);
}
