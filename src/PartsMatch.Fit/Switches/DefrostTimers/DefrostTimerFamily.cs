global using DefrostTimerNeed = PartsMatch.Fit.Judging.Need<PartsMatch.Fit.Switches.DefrostTimers.DefrostTimerSpec, PartsMatch.Fit.Switches.DefrostTimers.DefrostTimerSite>;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.DefrostTimers.Proof;

namespace PartsMatch.Fit.Switches.DefrostTimers;

/// <summary>Defrost timers as a family.</summary>
public static class DefrostTimerFamily
{
    /// <summary>The family.</summary>
    public static Family<DefrostTimerSpec, DefrostTimerSite, DefrostTimerReadings> DefrostTimer { get; } = new("defrostTimer", "defrost timer", new FamilyRules<DefrostTimerSpec, DefrostTimerSite, DefrostTimerReadings>
    {
        Aspects = DefrostTimerAspects.All,
        FormerAspects = new Dictionary<string, string?> { ["kindOfLoad"] = null },
        Pairs =
        [
            new("failSafeLongEnough", "resistive", "contacts near their amps grow hottest in defrosts that last as long as the fail-safe allows"),
            new("failSafeLongEnough", "releaseSupplied", "where the release pulls badly the fail-safe alone ends a defrost, and one that hardly suits ends it at the wrong time"),
            ContactPairs.RunningAndStarting,
        ],
        Vocabulary = DefrostTimerVocabulary.All,
        Deduce = DefrostTimerDeductions.Deduce,
        DeduceSite = DefrostTimerDeductions.DeduceSite,
        Contradictions = DefrostTimerContradictions.Find,
        SiteContradictions = DefrostTimerContradictions.AtTheSite,
        WillDiffer = (_, _) => [],
        Drawings = DefrostTimerDrawings.Of,
        Steps = DefrostTimerSteps.Of,
        BeforeCondemning = DefrostTimerProof.Diagnose,
        AfterSwap = DefrostTimerProof.Report,
    });
}
