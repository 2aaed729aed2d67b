using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors;

/// <summary>Fan motors as a family.</summary>
public static class MotorFamily
{
    /// <summary>The family.</summary>
    public static Family<MotorSpec, MotorSite> Motor { get; } = new("motor", "fan motor", new FamilyRules<MotorSpec, MotorSite>
    {
        Aspects = MotorAspects.All,
        Vocabulary = MotorVocabulary.All,
        Deduce = MotorDeductions.Deduce,
        DeduceSite = MotorDeductions.DeduceSite,
        Contradictions = MotorContradictions.Find,
    });
}
