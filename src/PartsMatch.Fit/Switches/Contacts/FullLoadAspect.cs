using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>What amps of one kind read of a contact.</summary>
/// <param name="Rows">The amps at each rated voltage; empty when not known.</param>
public readonly record struct ContactAmpsFacet(Sequence<AmpsAt> Rows);

/// <summary>Does the contact carry the full-load amps of all motors on it?</summary>
/// <remarks>
/// Added up, at the volts that it switches: what it is marked for there, or at higher volts, edges included; above its highest marked volts, a tenth over them for a supply that wanders, it is not rated at all.
/// Where nobody named what is on it, the old part's rating is enough.
/// </remarks>
/// <typeparam name="TSpec">The family's spec.</typeparam>
/// <typeparam name="TSite">The family's site.</typeparam>
public abstract class FullLoadAspect<TSpec, TSite>() : ContactAspect<TSpec, TSite, ContactAmpsFacet>(FullLoadQuestion.Asked)
    where TSpec : ContactSpec
    where TSite : ContactSite;

/// <summary>The question of one contact.</summary>
internal static class FullLoadQuestion
{
    /// <summary>The question.</summary>
    public static ContactQuestion<ContactAmpsFacet> Asked { get; } = new(
        "Full-load amps",
        ContactSources.FullLoad,
        new(0.8, 0.5, 1),
        new(["fullLoadAmps", "ratedVolts"], ["motors", "loadVolts"]) { Besides = ["loads", "loadCurrent", "resistiveAmps", "pilotDuty"] },
        part => new(RatedAmps.Of(part.RatedVolts, part.FullLoadAmps)),
        Judge);

    private static Finding Judge(OnTheContact on, ContactAmpsFacet facet) => on.HasMotor switch
    {
        false => Finding.Meets($"No motor is on it."),
        true => ContactAmps.FullLoad.AgainstLoad(on, on.FullLoad, facet.Rows),
        null => ContactAmps.FullLoad.AgainstOld(on, on.OldFullLoad, facet.Rows, isAsked: on.AsksForMotors),
    };
}
