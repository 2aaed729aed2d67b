using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.DefrostTimers.Aspects;

/// <summary>Do its contacts switch the direct current on them?</summary>
public sealed class DirectCurrent : DirectCurrentAspect<DefrostTimerSpec, DefrostTimerSite>
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = DirectCurrentQuestion.Asked.Fields with { Site = ["loadCurrent", "loadVolts", "fanVolts", "coilVolts"] };
}
