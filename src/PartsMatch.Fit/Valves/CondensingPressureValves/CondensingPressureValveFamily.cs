global using HeadNeed = PartsMatch.Fit.Judging.Need<PartsMatch.Fit.Valves.CondensingPressureValves.CondensingPressureValveSpec, PartsMatch.Fit.Valves.CondensingPressureValves.CondensingPressureValveSite>;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Valves.CondensingPressureValves.Aspects;
using PartsMatch.Fit.Valves.CondensingPressureValves.Proof;

namespace PartsMatch.Fit.Valves.CondensingPressureValves;

/// <summary>Condensing-pressure valves as a family.</summary>
public static class CondensingPressureValveFamily
{
    /// <summary>The questions, in order; those that turn most parts away stand first.</summary>
    public static IReadOnlyList<Aspect> Aspects { get; } =
    [
        new SameArrangement(),
        new HeadRefrigerant(),
        new HeadSetting(),
        new HeadCapacity(),
        new HeadBodyPressure(),
        new FloodingCharge(),
        new HeadOil(),
        new PortsByFunction(),
    ];

    /// <summary>The family.</summary>
    public static Family<CondensingPressureValveSpec, CondensingPressureValveSite, CondensingPressureValveReadings> CondensingPressureValve { get; } = new("condensingPressureValve", "condensing-pressure valve", new FamilyRules<CondensingPressureValveSpec, CondensingPressureValveSite, CondensingPressureValveReadings>
    {
        Aspects = Aspects,
        Pairs = [new("headSetting", "headCapacity", "a valve that is large for its load hunts, and does so about a pressure that is off")],
        Vocabulary = CondensingPressureValveVocabulary.All,
        Deduce = CondensingPressureValveDeductions.Deduce,
        DeduceSite = CondensingPressureValveDeductions.DeduceSite,
        Contradictions = CondensingPressureValveDeductions.OnPlate,
        SiteContradictions = CondensingPressureValveDeductions.WithSite,
        WillDiffer = (_, _) => [],
        Drawings = (_, _) => [],
        Steps = CondensingPressureValveSteps.Of,
        BeforeCondemning = CondensingPressureValveProof.Diagnose,
        AfterSwap = CondensingPressureValveProof.Report,
    });
}
