global using ContactorNeed = PartsMatch.Fit.Judging.Need<PartsMatch.Fit.Switches.Contactors.ContactorSpec, PartsMatch.Fit.Switches.Contactors.ContactorSite>;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contactors.Proof;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Contactors;

/// <summary>Contactors and relays as a family.</summary>
public static class ContactorFamily
{
    /// <summary>The family.</summary>
    public static Family<ContactorSpec, ContactorSite, ContactorReadings> Contactor { get; } = new("contactor", "contactor or relay", new FamilyRules<ContactorSpec, ContactorSite, ContactorReadings>
    {
        Aspects = ContactorAspects.All,
        Pairs =
        [
            new("fullLoad", "coil", "a coil on low volts presses the contacts least, and they chatter and burn under amps near their most"),
            new("coil", "coilPower", "a transformer near its most sags as the coil pulls in, and volts that are low already have nothing to sag by"),
            ContactPairs.RunningAndStarting,
        ],
        Vocabulary = ContactorVocabulary.All,
        Deduce = ContactorDeductions.Deduce,
        DeduceSite = ContactorDeductions.DeduceSite,
        Contradictions = ContactorContradictions.Find,
        SiteContradictions = ContactorContradictions.AtTheSite,
        WillDiffer = ContactorDifferences.Of,
        Drawings = ContactorDrawings.Of,
        Steps = ContactorSteps.Of,
        BeforeCondemning = ContactorProof.Diagnose,
        AfterSwap = ContactorProof.Report,
    });
}
