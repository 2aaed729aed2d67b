using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.DefrostTimers.Aspects;

/// <summary>Does its fan or compressor contact carry the full-load amps of all motors on it?</summary>
public sealed class FullLoad : FullLoadAspect<DefrostTimerSpec, DefrostTimerSite>
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["fullLoadAmps", "ratedVolts"], ["motors", "fanVolts"]) { Besides = ["loads", "loadCurrent", "clockVolts", "contactsNeeded", "contactsFor", "resistiveAmps", "pilotDuty", "coilsVa", "coilsInrushVa"] };
}
