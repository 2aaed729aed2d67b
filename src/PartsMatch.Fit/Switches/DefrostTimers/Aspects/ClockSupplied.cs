using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.DefrostTimers.Aspects;

/// <summary>Does its clock run on the volts and the frequency there?</summary>
/// <remarks>From 90 % of its volts, or of the lower end of their span, to 110 %, edges included, at its own frequency; a clock for two voltages is connected for one: a change. Where no volts were measured, it takes all that the old one was marked for.</remarks>
public sealed class ClockSupplied() : Aspect<DefrostTimerSpec, DefrostTimerSite, CoilFacet>("Clock's supply", isDeciding: true, DefrostTimerSources.Clock, new(0.7, 0.5, 1.5))
{
    private static readonly CoilNames Names = new("clock", "clockVolts", "clockFrequency", "clockSupplyVolts", "clockSupplyFrequency");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["clockVolts", "clockFrequency"], ["clockSupplyVolts", "clockSupplyFrequency"]);

    /// <inheritdoc/>
    public override CoilFacet Read(DefrostTimerSpec part) => TimerCoils.Of(part.ClockVolts, part.ClockFrequency);

    /// <inheritdoc/>
    public override Finding Judge(DefrostTimerNeed need, CoilFacet facet)
    {
        var feed = need.Once(Feed);
        var found = TimerCoils.Judge(facet, feed, TimerCoils.Clock, Names);
        if (found.Verdict != Verdict.Meets || facet.Own.Count < 2) return found;
        var right = feed.Volts is { } volts ? facet.Own.First(coil => CoilOnSupply.FitsVolts(coil, volts, TimerCoils.Clock)) : (CoilMade?)null;
        return found.With([new(DefrostTimerChanges.ConnectClock, right is { } coil ? $"connect its clock for {coil}" : (FormattableString)$"connect its clock for the volts there, which are to be measured")]);
    }

    private static TimerFeed Feed(DefrostTimerNeed need) => TimerFeed.Of(need.Site.ClockSupplyVolts, need.Site.ClockSupplyFrequency, need.Plate.ClockVolts, need.Plate.ClockFrequency);
}
