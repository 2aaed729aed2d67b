using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.Running;

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
        DeduceSite = DeduceSite,
        Contradictions = MotorContradictions.Find,
        WillDiffer = MotorDifferences.Of,
        Steps = MotorSteps.Of,
    });

    private static (MotorSite Site, IReadOnlyList<Deduction> Deductions) DeduceSite(MotorSpec plate, MotorSite site)
    {
        var (supplied, ofSupply) = MotorDeductions.DeduceSite(plate, site);
        var (placed, ofPlace) = PlaceDeductions.DeduceSite(plate, supplied);
        var (filled, ofBody) = BodyDeductions.DeduceSite(plate, placed);
        return (filled, [.. ofSupply, .. ofPlace, .. ofBody]);
    }
}
