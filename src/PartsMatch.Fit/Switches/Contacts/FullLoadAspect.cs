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
public abstract class FullLoadAspect<TSpec, TSite>() : Aspect<TSpec, TSite, ContactAmpsFacet>("Full-load amps", isDeciding: true, ContactSources.FullLoad, new(0.8, 0.5, 1))
    where TSpec : ContactSpec
    where TSite : ContactSite
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["fullLoadAmps", "ratedVolts"], ["motors", "loadVolts"]) { Besides = ["loads", "resistiveAmps", "pilotDuty"] };

    /// <inheritdoc/>
    public override ContactAmpsFacet Read(TSpec part) => new(RatedAmps.Of(part.RatedVolts, part.FullLoadAmps));

    /// <inheritdoc/>
    public override Finding Judge(Need<TSpec, TSite> need, ContactAmpsFacet facet)
    {
        var on = OnTheContact.Of(need);
        return on.HasMotor switch
        {
            false => Finding.Meets($"No motor is on it."),
            true => ContactAmps.FullLoad.AgainstLoad(on, on.FullLoad, facet.Rows),
            null => ContactAmps.FullLoad.AgainstOld(on, on.OldFullLoad, facet.Rows, isAsked: on.AsksForMotors),
        };
    }
}
