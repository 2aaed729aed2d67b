global using ContactorNeed = PartsMatch.Fit.Judging.Need<PartsMatch.Fit.Switches.Contactors.ContactorSpec, PartsMatch.Fit.Switches.Contactors.ContactorSite>;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contactors.Proof;

namespace PartsMatch.Fit.Switches.Contactors;

/// <summary>Contactors and relays as a family.</summary>
public static class ContactorFamily
{
    /// <summary>The family.</summary>
    public static Family<ContactorSpec, ContactorSite, ContactorReadings> Contactor { get; } = new("contactor", "contactor or relay", new FamilyRules<ContactorSpec, ContactorSite, ContactorReadings>
    {
        Aspects = ContactorAspects.All,
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
