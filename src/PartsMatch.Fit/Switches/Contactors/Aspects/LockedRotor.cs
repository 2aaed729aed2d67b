using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>Does the contactor bear the locked-rotor amps of all motors on it?</summary>
public sealed class LockedRotor() : LockedRotorAspect<ContactorSpec, ContactorSite>(ContactorSources.LockedRotor)
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["lockedRotorAmps", "fullLoadAmps", "ratedVolts"], ["motors", "loadVolts"]) { Besides = ["loads", "loadCurrent", "acThreeAmps", "acEightAmps", "resistiveAmps", "pilotDuty", "singlePhaseHorsepower", "threePhaseHorsepower", "poleCount", "size"] };
}
