using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.DefrostTimers.Aspects;

/// <summary>Do its contacts switch the direct current on them?</summary>
public sealed class DirectCurrent : DirectCurrentAspect<DefrostTimerSpec, DefrostTimerSite>
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(DirectCurrentQuestion.Asked.Fields.Spec, ["loadCurrent", "loadVolts", "coilVolts"]) { Besides = [.. DirectCurrentQuestion.Asked.Fields.Besides, "fanVolts"] };
}
