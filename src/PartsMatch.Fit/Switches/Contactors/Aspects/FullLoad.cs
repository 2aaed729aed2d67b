using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>Does the contactor carry the full-load amps of all motors on it?</summary>
public sealed class FullLoad : FullLoadAspect<ContactorSpec, ContactorSite>
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["fullLoadAmps", "acEightAmps", "ratedVolts"], ["motors", "loadVolts"]) { Besides = ["loads", "loadCurrent", "acThreeAmps", "lockedRotorAmps", "resistiveAmps", "pilotDuty"] };
}
