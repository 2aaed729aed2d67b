using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.DefrostTimers.Aspects;

/// <summary>Does it switch the coils on its contacts?</summary>
public sealed class PilotLoad : PilotLoadAspect<DefrostTimerSpec, DefrostTimerSite>
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["pilotDuty"], ["coilsVa", "coilsInrushVa", "coilVolts"]) { Besides = ["loads", "loadCurrent", "contactsNeeded", "contactsFor"] };
}
