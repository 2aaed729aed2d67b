using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors;

/// <summary>Readings of a motor's plate that cannot all be true.</summary>
public static class MotorContradictions
{
    /// <summary>All that disagree.</summary>
    public static IReadOnlyList<Contradiction> Find(MotorSpec spec) => [];
}
