using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.DefrostTimers.Aspects;

/// <summary>Does its heater contact carry the amps of all heaters on it?</summary>
public sealed class Resistive : ResistiveAspect<DefrostTimerSpec, DefrostTimerSite>
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["resistiveAmps", "ratedVolts"], ["heaterAmps", "heaterPower", "loadVolts"]) { Besides = ["loads", "loadCurrent", "clockVolts", "contactsNeeded", "contactsFor", "loadPhase", "heaterOwnVolts"] };
}
