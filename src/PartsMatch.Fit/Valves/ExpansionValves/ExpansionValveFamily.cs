global using ExpansionNeed = PartsMatch.Fit.Judging.Need<PartsMatch.Fit.Valves.ExpansionValves.ExpansionValveSpec, PartsMatch.Fit.Valves.ExpansionValves.ExpansionValveSite>;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Valves.ExpansionValves.Proof;

namespace PartsMatch.Fit.Valves.ExpansionValves;

/// <summary>Thermostatic expansion valves as a family.</summary>
public static class ExpansionValveFamily
{
    /// <summary>The family.</summary>
    public static Family<ExpansionValveSpec, ExpansionValveSite, ExpansionValveReadings> ExpansionValve { get; } = new("expansionValve", "expansion valve", new FamilyRules<ExpansionValveSpec, ExpansionValveSite, ExpansionValveReadings>
    {
        Aspects = ExpansionValveAspects.All,
        Pairs = [new("capacityAtHeads", "expansionConnections", "a reducer before it takes pressure that a valve near its least capacity needs")],
        Vocabulary = ExpansionValveVocabulary.All,
        Deduce = ExpansionValveDeductions.Deduce,
        DeduceSite = ExpansionValveDeductions.DeduceSite,
        Contradictions = ExpansionValveContradictions.OnPlate,
        SiteContradictions = ExpansionValveContradictions.WithSite,
        WillDiffer = ExpansionValveDifferences.Of,
        Drawings = ExpansionValveDifferences.Drawings,
        Steps = ExpansionValveSteps.Of,
        BeforeCondemning = ExpansionValveProof.Diagnose,
        AfterSwap = ExpansionValveProof.Report,
    });
}
