global using CapacitorNeed = PartsMatch.Fit.Judging.Need<PartsMatch.Fit.Capacitors.CapacitorSpec, PartsMatch.Fit.Capacitors.CapacitorSite>;
using PartsMatch.Fit.Capacitors.Proof;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Capacitors;

/// <summary>Run capacitors as a family.</summary>
public static class CapacitorFamily
{
    /// <summary>The family.</summary>
    public static Family<CapacitorSpec, CapacitorSite, CapacitorReadings> Capacitor { get; } = new("capacitor", "run capacitor", new FamilyRules<CapacitorSpec, CapacitorSite, CapacitorReadings>
    {
        Aspects = CapacitorAspects.All,
        Pairs = [new("capacitance", "temperatureRating", "a can that runs hot loses capacitance, and one that is off has none to lose")],
        Vocabulary = CapacitorVocabulary.All,
        Deduce = CapacitorDeductions.Deduce,
        DeduceSite = CapacitorDeductions.DeduceSite,
        Contradictions = _ => [],
        SiteContradictions = MotorAgainstCan.Find,
        WillDiffer = (_, _) => [],
        Drawings = CapacitorDrawings.Of,
        Steps = CapacitorSteps.Of,
        BeforeCondemning = CapacitorProof.Diagnose,
        AfterSwap = CapacitorProof.Report,
    });
}
