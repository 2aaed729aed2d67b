global using SolenoidNeed = PartsMatch.Fit.Judging.Need<PartsMatch.Fit.Valves.SolenoidValves.SolenoidValveSpec, PartsMatch.Fit.Valves.SolenoidValves.SolenoidValveSite>;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Valves.SolenoidValves.Proof;

namespace PartsMatch.Fit.Valves.SolenoidValves;

/// <summary>Solenoid valves as a family.</summary>
public static class SolenoidValveFamily
{
    /// <summary>The family.</summary>
    public static Family<SolenoidValveSpec, SolenoidValveSite, SolenoidValveReadings> SolenoidValve { get; } = new("solenoidValve", "solenoid valve", new FamilyRules<SolenoidValveSpec, SolenoidValveSite, SolenoidValveReadings>
    {
        Aspects = SolenoidValveAspects.All,
        Vocabulary = SolenoidValveVocabulary.All,
        Deduce = SolenoidValveDeductions.Deduce,
        DeduceSite = SolenoidValveDeductions.DeduceSite,
        Contradictions = SolenoidValveContradictions.OnPlate,
        SiteContradictions = SolenoidValveContradictions.WithSite,
        WillDiffer = SolenoidValveDifferences.Of,
        Drawings = SolenoidValveDifferences.Drawings,
        Steps = SolenoidValveSteps.Of,
        BeforeCondemning = SolenoidValveProof.Diagnose,
        AfterSwap = SolenoidValveProof.Report,
    });
}
