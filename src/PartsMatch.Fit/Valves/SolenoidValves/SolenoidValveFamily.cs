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
        Pairs =
        [
            new("coilSupplied", "opensAgainst", "a coil on volts that are off pulls least where it must lift against most"),
            new("flowCapacity", "opensAgainst", "a valve that hardly gets the drop it needs to lift has no force to spare against a pressure near its most"),
            new("flowCapacity", "connections", "a reducer takes pressure that a valve near its largest drop cannot spare"),
        ],
        FormerAspects = new Dictionary<string, string?> { ["besideFlammable"] = "hazardousPlace" },
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
