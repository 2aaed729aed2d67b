using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Fit.Switches.DefrostTimers;

/// <summary>What a defrost timer's plate, and its place, cannot say all at once.</summary>
public static class DefrostTimerContradictions
{
    /// <summary>All that disagrees on the plate.</summary>
    public static IReadOnlyList<Contradiction> Find(DefrostTimerSpec plate) => [.. ContactAgreement.OfRatings(plate), .. ReleaseOfNothing(plate)];

    /// <summary>All of the place that does not go with the plate.</summary>
    public static IReadOnlyList<Contradiction> AtTheSite(DefrostTimerSpec plate, DefrostTimerSite site) =>
    [
        .. ContactAgreement.OfLoads(plate, site, "timer"),
        .. Fed(plate.ClockVolts, site.ClockSupplyVolts, TimerCoils.Clock, "clock", "clockVolts", "clockSupplyVolts", DefrostTimerSources.Clock),
        .. Fed(plate.ReleaseVolts, site.ReleaseSupplyVolts, TimerCoils.Release, "release solenoid", "releaseVolts", "releaseSupplyVolts", DefrostTimerSources.Release),
        .. Frequency(plate, site),
        .. Ended(plate, site),
        .. Programme(plate, site),
        .. Scaled(site),
    ];

    private static IEnumerable<Contradiction> ReleaseOfNothing(DefrostTimerSpec plate)
    {
        if (plate is { ReleaseVolts: { } volts, EndedBy: { } ends } && !ends.Contains(DefrostEnd.Temperature)) yield return new(["releaseVolts", "endedBy"], $"It has a release solenoid of {Deducing.Text(volts)}, and temperature is not among what ends a defrost.", DefrostTimerSources.EndedBy);
    }

    private static IEnumerable<Contradiction> Fed(Taps? marked, ElectricPotential? volts, CoilWindow window, string what, string field, string siteField, Source source)
    {
        if (marked is null || Rounded.Volts(volts) is not { } there || TimerCoils.Of(marked, null).Own.Any(one => CoilOnSupply.FitsVolts(one, there, window))) yield break;
        yield return new([field], FormattableString.Invariant($"The old {what} was for {Deducing.Text(marked)}, and {there:0.#} V are there: it was a wrong one, or one of the two is misread."), source) { SiteFields = [siteField] };
    }

    private static IEnumerable<Contradiction> Frequency(DefrostTimerSpec plate, DefrostTimerSite site)
    {
        if (site.ClockSupplyFrequency is not { } there) yield break;
        foreach (var (marked, what, field, window, source) in new[]
        {
            (plate.ClockFrequency, "clock", "clockFrequency", TimerCoils.Clock, DefrostTimerSources.Clock),
            (plate.ReleaseFrequency, "release solenoid", "releaseFrequency", TimerCoils.Release, DefrostTimerSources.Release),
        })
        {
            if (marked is null || marked.Any(one => Within.AtMost(Math.Abs(one.Hertz - there.Hertz), window.HertzOff * one.Hertz)) || (field == "releaseFrequency" && marked.Equals(plate.ClockFrequency))) continue;
            yield return new([field], $"The old {what} was for {Deducing.Text(marked)}, and {Deducing.Text(there)} are there: one of the two is misread.", source) { SiteFields = ["clockSupplyFrequency"] };
        }
    }

    private static IEnumerable<Contradiction> Ended(DefrostTimerSpec plate, DefrostTimerSite site)
    {
        if (plate.EndedBy is { } ends && site.EndedThereBy is { } end && end != DefrostEnd.Time && !ends.Contains(end)) yield return new(["endedBy"], $"The old one ended a defrost by {Deducing.Text(ends)}, and {Deducing.Text(end)} is said to end it there.", DefrostTimerSources.EndedBy) { SiteFields = ["endedThereBy"] };
    }

    private static IEnumerable<Contradiction> Programme(DefrostTimerSpec plate, DefrostTimerSite site)
    {
        if (plate.Starts is { } starts && site.StartsNeeded is { } needed && (needed < starts.Least || needed > starts.Most)) yield return new(["starts"], FormattableString.Invariant($"The old one's programme started {starts}, and {needed} are said to be needed: what is needed is judged by."), DefrostTimerSources.Starts) { SiteFields = ["startsNeeded"] };
        if (plate.FailSafe is { Figures: var span } && site.MinutesNeeded is { Figure: var minutes } && !Within.AtMost(minutes, span.High)) yield return new(["failSafe"], FormattableString.Invariant($"The old one's fail-safe went up to {span.High:0.#} min, and {minutes:0.#} min are needed: it may never have cleared the coil."), DefrostTimerSources.FailSafe) { SiteFields = ["minutesNeeded"] };
    }

    /// <summary>Minutes as timed there against those that follow from the volts: a tenth apart is measuring (practice). Own volts that are those there may have been taken for them.</summary>
    private static IEnumerable<Contradiction> Scaled(DefrostTimerSite site)
    {
        if (site is not { MinutesNeeded: { } needed, MinutesAtHeaterVolts: { } minutes, HeaterOwnVolts: { } own, LoadVolts: { } there } || own.Equals(there, ElectricPotential.Zero)) yield break;
        var scaled = minutes.Value.Minutes * Math.Pow(own.Volts / there.Volts, 2);
        if (!Within.Ratio(scaled, needed.Value.Minutes, 1.1)) yield return new([], FormattableString.Invariant($"{minutes.Figure:0.#} min at the heaters' own volts are {scaled:0.#} min at the volts there, and {needed.Figure:0.#} min are said to be needed: what is needed is judged by."), DefrostTimerSources.HeatByVolts) { SiteFields = ["minutesNeeded", "minutesAtHeaterVolts"] };
    }
}
