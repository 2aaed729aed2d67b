global using ThermostatNeed = PartsMatch.Fit.Judging.Need<PartsMatch.Fit.Switches.Thermostats.ThermostatSpec, PartsMatch.Fit.Switches.Thermostats.ThermostatSite>;

using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.Thermostats.Proof;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>Thermostats, fan-delay and defrost-end switches as a family.</summary>
public static class ThermostatFamily
{
    /// <summary>The family.</summary>
    public static Family<ThermostatSpec, ThermostatSite, ThermostatReadings> Thermostat { get; } = new("thermostat", "thermostat or defrost switch", new FamilyRules<ThermostatSpec, ThermostatSite, ThermostatReadings>
    {
        Aspects = ThermostatAspects.All,
        FormerAspects = new Dictionary<string, string?> { ["kindOfLoad"] = null },
        Pairs =
        [
            new("switchingPoint", "differentialSpan", "what is off in the one and in the other adds up where it comes back"),
            new("switchingPoint", "fanPoints", "fans that start early after a defrost that ended early blow meltwater into the box"),
            ContactPairs.RunningAndStarting,
        ],
        Vocabulary = ThermostatVocabulary.All,
        Deduce = ThermostatDeductions.Deduce,
        DeduceSite = ThermostatDeductions.DeduceSite,
        Contradictions = ThermostatContradictions.Find,
        SiteContradictions = ThermostatContradictions.AtTheSite,
        WillDiffer = (_, _) => [],
        Drawings = ThermostatDrawings.Of,
        Steps = ThermostatSteps.Of,
        BeforeCondemning = ThermostatProof.Diagnose,
        AfterSwap = ThermostatProof.Report,
    });
}
