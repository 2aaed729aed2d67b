using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Fit.Switches.DefrostTimers;

/// <summary>What follows from a defrost timer's plate, and for its place.</summary>
public static class DefrostTimerDeductions
{
    /// <summary>What follows from its release solenoid and its horsepower.</summary>
    public static (DefrostTimerSpec Spec, IReadOnlyList<Deduction> Deductions) Deduce(DefrostTimerSpec spec) => Deducing.Apply(spec, RatedAtTheClock, InAmps, Release, EndsByRelease);

    /// <summary>What the old one tells of its place, and what the volts there make of the heaters.</summary>
    public static (DefrostTimerSite Site, IReadOnlyList<Deduction> Deductions) DeduceSite(DefrostTimerSpec plate, DefrostTimerSite site) =>
        Deducing.Apply(site, ContactDeductions.Hazard, ScaledMinutes, ContactDeductions.HeaterVolts, ContactDeductions.HeaterAmps, _ => AsTheOldOne(plate));

    /// <summary>On a plate with amps and a single voltage that is the contacts', too.</summary>
    private static IEnumerable<Deduction> RatedAtTheClock(DefrostTimerSpec spec)
    {
        if (spec is { ResistiveAmps: null, FullLoadAmps: null, LockedRotorAmps: null }) yield break;
        if (VoltsOfTheClock(spec) is { } volts) yield return new(Side.Plate, "ratedVolts", Deducing.Text(volts), "no other volts are marked than its clock's", ["clockVolts"], DefrostTimerSources.RatedVolts);
    }

    /// <summary>The volts that contacts are taken to be rated at where none are marked: the clock's, of a span the higher; null of a clock for two voltages.</summary>
    internal static Figures<ElectricPotential>? VoltsOfTheClock(DefrostTimerSpec spec) => spec.ClockVolts is { Count: 1 } clock ? new(clock[0].Last) : null;

    private static IEnumerable<Deduction> InAmps(DefrostTimerSpec spec) => spec.SinglePhaseHorsepower is not null
        ? ContactDeductions.FullLoad(spec.RatedVolts, spec.SinglePhaseHorsepower, Phases.Single, "singlePhaseHorsepower")
        : ContactDeductions.FullLoad(spec.RatedVolts, spec.ThreePhaseHorsepower, Phases.Three, "threePhaseHorsepower");

    /// <summary>Clock and release solenoid hang on the same line in most timers. What a clock that is connected for one of two voltages says of the solenoid is not known: that may be for one of them alone.</summary>
    private static IEnumerable<Deduction> Release(DefrostTimerSpec spec)
    {
        if (spec.ReleaseVolts is null && spec.EndedBy?.Contains(DefrostEnd.Temperature) != true) yield break;
        if (spec is { ReleaseVolts: null, ClockVolts: { Count: 1 } volts }) yield return new(Side.Plate, "releaseVolts", Deducing.Text(volts), "its clock's volts", ["clockVolts", "endedBy"], DefrostTimerSources.Release);
        if (spec is { ReleaseFrequency: null, ClockFrequency: { } hertz }) yield return new(Side.Plate, "releaseFrequency", Deducing.Text(hertz), "its clock's frequency", ["clockFrequency"], DefrostTimerSources.Release);
    }

    private static IEnumerable<Deduction> EndsByRelease(DefrostTimerSpec spec)
    {
        if (spec.ReleaseVolts is not null) yield return new(Side.Plate, "endedBy", Deducing.Text(new Choices<DefrostEnd>(DefrostEnd.Temperature)), "it has a release solenoid", ["releaseVolts"], DefrostTimerSources.EndedBy);
    }

    /// <summary>The same heat takes the longer the lower the volts: minutes times the square of own volts over those there. Asked before own volts are taken for those there: minutes that somebody timed are not to rest on that.</summary>
    private static IEnumerable<Deduction> ScaledMinutes(DefrostTimerSite site)
    {
        if (site is not { MinutesAtHeaterVolts: { } minutes, HeaterOwnVolts: { } own, LoadVolts: { } there }) yield break;
        var needed = minutes.Value.Minutes * Math.Pow(own.Volts / there.Volts, 2);
        yield return new(Side.Site, "minutesNeeded", Deducing.Text(new DefrostMinutes(Duration.FromMinutes(Math.Round(needed, 1)))), "the heat goes with the square of the volts", ["minutesAtHeaterVolts", "heaterOwnVolts", "loadVolts"], DefrostTimerSources.HeatByVolts);
    }

    private static IEnumerable<Deduction> AsTheOldOne(DefrostTimerSpec plate)
    {
        if (plate.ClockVolts is { Count: 1 } clock && !clock[0].HasTwoEnds) yield return As("clockSupplyVolts", Deducing.Text(clock[0].First), "clockVolts");
        if (plate.ClockFrequency is { Count: 1 } hertz) yield return As("clockSupplyFrequency", Deducing.Text(hertz[0]), "clockFrequency");
        if (plate.ReleaseVolts is { Count: 1 } release && !release[0].HasTwoEnds) yield return As("releaseSupplyVolts", Deducing.Text(release[0].First), "releaseVolts");
        if (plate.EndedBy is { Count: 1 } end) yield return As("endedThereBy", Deducing.Text(end[0]), "endedBy");
        if (plate.ContactsFor is { } contacts) yield return As("contactsNeeded", Deducing.Text(contacts), "contactsFor");
        if (plate.Starts is { } starts && starts.Least == starts.Most) yield return As("startsNeeded", Deducing.Text(starts.Most), "starts");
    }

    private static Deduction As(string field, string text, string from) => new(Side.Site, field, text, "the old timer", [from], ContactSources.AsTheOldOne);
}
