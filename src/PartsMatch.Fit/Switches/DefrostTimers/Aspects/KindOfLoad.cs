using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.DefrostTimers.Aspects;

/// <summary>Is it marked for motors where a motor is on it?</summary>
public sealed class KindOfLoad : KindOfLoadAspect<DefrostTimerSpec, DefrostTimerSite>
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["pilotDuty", "fullLoadAmps", "resistiveAmps"], ["loads", "motors"]) { Besides = ["lockedRotorAmps", "singlePhaseHorsepower", "threePhaseHorsepower"] };
}
