global using PressureControlNeed = PartsMatch.Fit.Judging.Need<PartsMatch.Fit.Switches.PressureControls.PressureControlSpec, PartsMatch.Fit.Switches.PressureControls.PressureControlSite>;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.PressureControls.Proof;

namespace PartsMatch.Fit.Switches.PressureControls;

/// <summary>Pressure controls as a family.</summary>
public static class PressureControlFamily
{
    /// <summary>The family.</summary>
    public static Family<PressureControlSpec, PressureControlSite, PressureControlReadings> PressureControl { get; } = new("pressureControl", "pressure control", new FamilyRules<PressureControlSpec, PressureControlSite, PressureControlReadings>
    {
        Aspects = PressureControlAspects.All,
        FormerAspects = new Dictionary<string, string?> { ["kindOfLoad"] = null },
        Pairs = [ContactPairs.RunningAndStarting, ContactPairs.MotorsAndHeaters],
        Vocabulary = PressureControlVocabulary.All,
        Deduce = PressureControlDeductions.Deduce,
        DeduceSite = PressureControlDeductions.DeduceSite,
        Contradictions = PressureControlContradictions.Find,
        SiteContradictions = PressureControlContradictions.AtTheSite,
        WillDiffer = (_, _) => [],
        Drawings = PressureControlDrawings.Of,
        Steps = PressureControlSteps.Of,
        BeforeCondemning = PressureControlProof.Diagnose,
        AfterSwap = PressureControlProof.Report,
    });
}
