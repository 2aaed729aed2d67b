using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>Does the contact carry the amps of all heaters on it?</summary>
/// <remarks>Resistive amps, AC-1, added up by themselves at the volts that it switches; motor amps do not stand in for them.</remarks>
/// <typeparam name="TSpec">The family's spec.</typeparam>
/// <typeparam name="TSite">The family's site.</typeparam>
public abstract class ResistiveAspect<TSpec, TSite>() : ContactAspect<TSpec, TSite, ContactAmpsFacet>(ResistiveQuestion.Asked)
    where TSpec : ContactSpec
    where TSite : ContactSite;

/// <summary>The question of one contact.</summary>
internal static class ResistiveQuestion
{
    /// <summary>The question.</summary>
    public static ContactQuestion<ContactAmpsFacet> Asked { get; } = new(
        "Resistive amps",
        ContactSources.Resistive,
        new(0.5, 0.5, 0.8),
        new(["resistiveAmps", "ratedVolts"], ["heaterAmps", "heaterPower", "loadVolts"]) { Besides = ["loads", "loadCurrent", "loadPhase", "heaterOwnVolts"] },
        part => new(RatedAmps.Of(part.RatedVolts, part.ResistiveAmps)),
        Judge)
    {
        Measure = ContactAmps.Resistive.Measure,
    };

    private static Finding Judge(OnTheContact on, ContactAmpsFacet facet) => on.Has(ContactLoad.Heater) switch
    {
        false => Finding.Meets($"No heater is on it."),
        true => ContactAmps.Resistive.AgainstLoad(on, on.Heater, facet.Rows),
        null => ContactAmps.Resistive.AgainstOld(on, on.OldResistive, facet.Rows, isAsked: on.AsksForHeaters),
    };
}
