using PartsMatch.Fit.Ignition;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Fit.Switches.DefrostTimers;

/// <summary>What follows from a defrost timer's plate, and for its place.</summary>
public static class DefrostTimerDeductions
{
    /// <summary>What follows from its horsepower and its clock: for a catalogue part as well, so that nothing is among it that only mostly holds.</summary>
    public static (DefrostTimerSpec Spec, IReadOnlyList<Deduction> Deductions) Deduce(DefrostTimerSpec spec) => Deducing.Apply(spec, InAmps, ReleaseFrequency);

    /// <summary>What the old one tells of its place, and what the volts there make of the heaters.</summary>
    public static (DefrostTimerSite Site, IReadOnlyList<Deduction> Deductions) DeduceSite(DefrostTimerSpec plate, DefrostTimerSite site) =>
        Deducing.Apply(site, there => BurningRefrigerant.Hazard(there.Refrigerant), ScaledMinutes, ContactDeductions.HeaterVolts, ContactDeductions.HeaterAmps, _ => AsTheOldOne(plate));

    private static IEnumerable<Deduction> InAmps(DefrostTimerSpec spec) => spec.SinglePhaseHorsepower is not null
        ? ContactDeductions.FullLoad(spec.RatedVolts, spec.SinglePhaseHorsepower, Phases.Single, "singlePhaseHorsepower")
        : ContactDeductions.FullLoad(spec.RatedVolts, spec.ThreePhaseHorsepower, Phases.Three, "threePhaseHorsepower");

    /// <summary>Whatever line feeds it, a release solenoid is fed the frequency of the clock's mains.</summary>
    private static IEnumerable<Deduction> ReleaseFrequency(DefrostTimerSpec spec)
    {
        if (spec.ReleaseVolts is null && spec.EndedBy?.Contains(DefrostEnd.Temperature) != true) yield break;
        if (spec.ClockFrequency is { } hertz) yield return new(Side.Plate, "releaseFrequency", Deducing.Text(hertz), "its clock's frequency", ["clockFrequency"], DefrostTimerSources.Release);
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
        if (plate.Starts is { } starts && starts.Least == starts.Most) yield return As("startsNeeded", Deducing.Text(starts.Most), "starts");
    }

    private static Deduction As(string field, string text, string from) => new(Side.Site, field, text, "the old timer", [from], ContactSources.AsTheOldOne);
}
