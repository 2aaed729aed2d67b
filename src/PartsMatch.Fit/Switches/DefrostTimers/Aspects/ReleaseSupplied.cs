using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.DefrostTimers.Aspects;

/// <summary>Does its release solenoid pull on what the temperature switch feeds it?</summary>
/// <remarks>From 85 to 110 % of its volts, edges included, at its frequency; one for two voltages is connected for one: a change. Where an old one's are not marked, those of its clock are taken for what fed it. Of no matter where time or pressure ends the defrost.</remarks>
public sealed class ReleaseSupplied() : Aspect<DefrostTimerSpec, DefrostTimerSite, CoilFacet>("Release solenoid", isDeciding: true, DefrostTimerSources.Release, new(0.5, 0.5, 1))
{
    private static readonly CoilNames Names = new("release solenoid", "releaseVolts", "releaseFrequency", "releaseSupplyVolts", "clockSupplyFrequency") { Connect = DefrostTimerChanges.ConnectRelease };

    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = CoilOnSupply.Measure(TimerCoils.Release, Names);

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["releaseVolts", "releaseFrequency"], ["releaseSupplyVolts", "clockSupplyFrequency"]) { Besides = ["endedThereBy", "endedBy", "clockVolts"] };

    /// <inheritdoc/>
    public override CoilFacet Read(DefrostTimerSpec part) => TimerCoils.Of(part.ReleaseVolts, part.ReleaseFrequency);

    /// <inheritdoc/>
    public override Finding Judge(DefrostTimerNeed need, CoilFacet facet)
    {
        if (need.Site.EndedThereBy is { } end) return end == DefrostEnd.Temperature ? Supplied(need, facet) : Finding.Meets($"No switch on the coil feeds its release there.");
        if (need.Plate.KnownEnds is not { } ends) return Finding.Unknown(Side.Site, "endedThereBy", $"Whether a switch on the coil feeds its release is not known.");
        if (!ends.Contains(DefrostEnd.Temperature)) return Finding.Meets($"The old one had nothing to do with a switch on the coil.");
        var found = Supplied(need, facet);
        return found.Verdict == Verdict.Fails ? Finding.Unknown(Side.Site, "endedThereBy", $"Its release solenoid is not for what fed the old one's; whether a switch on the coil feeds it is not known.") : found;
    }

    /// <summary>Volts that are only taken for those that feed it turn no part away.</summary>
    private static Finding Supplied(DefrostTimerNeed need, CoilFacet facet)
    {
        var found = CoilOnSupply.Judge(facet, need.Once(Feed), TimerCoils.Release, Names);
        if (need.Plate.ReleaseVolts is not null || need.Plate.ReleaseLine is null || need.Site.ReleaseSupplyVolts is not null) return found;
        return found.Verdict == Verdict.Fails ? CoilOnSupply.Judge(facet, need.Once(FeedAsRead), TimerCoils.Release, Names) : found.Then($"The old one's is not marked: the volts of its clock are taken.");
    }

    private static CoilSupply Feed(DefrostTimerNeed need) => TimerCoils.Feed(need.Site.ReleaseSupplyVolts, need.Site.ClockSupplyFrequency, need.Plate.ReleaseLine, need.Plate.ReleaseFrequency);

    private static CoilSupply FeedAsRead(DefrostTimerNeed need) => TimerCoils.Feed(need.Site.ReleaseSupplyVolts, need.Site.ClockSupplyFrequency, need.Plate.ReleaseVolts, need.Plate.ReleaseFrequency);
}
