using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.DefrostTimers.Aspects;

/// <summary>Does its clock run on the volts and the frequency there?</summary>
/// <remarks>From 90 % of its volts, or of the lower end of their span, to 110 %, edges included, at its own frequency, within 1 %; a clock for two voltages is connected for one: a change. Where no volts were measured, it takes all that the old one was marked for.</remarks>
public sealed class ClockSupplied() : Aspect<DefrostTimerSpec, DefrostTimerSite, CoilFacet>("Clock's supply", isDeciding: true, DefrostTimerSources.Clock, new(0.7, 0.5, 1.5))
{
    private static readonly CoilNames Names = new("clock", "clockVolts", "clockFrequency", "clockSupplyVolts", "clockSupplyFrequency") { Connect = DefrostTimerChanges.ConnectClock };

    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = CoilOnSupply.Measure(TimerCoils.Clock, Names);

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["clockVolts", "clockFrequency"], ["clockSupplyVolts", "clockSupplyFrequency"]);

    /// <inheritdoc/>
    public override CoilFacet Read(DefrostTimerSpec part) => TimerCoils.Of(part.ClockVolts, part.ClockFrequency);

    /// <inheritdoc/>
    public override Finding Judge(DefrostTimerNeed need, CoilFacet facet) => CoilOnSupply.Judge(facet, need.Once(Feed), TimerCoils.Clock, Names);

    private static CoilSupply Feed(DefrostTimerNeed need) => TimerCoils.Feed(need.Site.ClockSupplyVolts, need.Site.ClockSupplyFrequency, need.Plate.ClockVolts, need.Plate.ClockFrequency);
}
