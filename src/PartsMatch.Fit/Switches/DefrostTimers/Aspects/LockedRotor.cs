using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.DefrostTimers.Aspects;

/// <summary>Does its fan or compressor contact bear the locked-rotor amps of all motors on it?</summary>
public sealed class LockedRotor() : LockedRotorAspect<DefrostTimerSpec, DefrostTimerSite>(ContactSources.LockedRotor)
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["lockedRotorAmps", "fullLoadAmps", "ratedVolts"], ["motors", "fanVolts"]) { Besides = ["loads", "loadCurrent", "clockVolts", "contactsNeeded", "contactsFor", "resistiveAmps", "pilotDuty", "coilsVa", "coilsInrushVa"] };
}
