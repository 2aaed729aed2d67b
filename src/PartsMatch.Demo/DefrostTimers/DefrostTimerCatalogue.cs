using PartsMatch.Demo.Outcomes;
using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.DefrostTimers;
using UnitsNet;

namespace PartsMatch.Demo.DefrostTimers;

/// <summary>The invented defrost timers: 120 of them.</summary>
public sealed class DefrostTimerCatalogue : FamilyCatalogue
{
    public override string Kind => "defrostTimer";

    public override Shape Shape => Shape<DefrostTimerSpec>.Of;

    public override int SeedOffset => 8;

    public override string HowDrawn => "Defrost timers are drawn by line (24-hour clocks with release solenoid in a box or as a mechanism, those of reach-ins that count running time, two-pole ones with fan delay and pump-down, pressure-ended ones, and 50 Hz ones): a line brings its programme, its contacts and the marks of its terminals; the clock's volts are drawn, and the release solenoid's are the same.";

    public override string WhatLacks => "As many defrost timers lack one of: locked-rotor amps, terminals, box pattern, pilot duty, release volts, the clock's frequency, whether contacts are open, fail-safe.";

    public override IReadOnlyDictionary<string, Look> Looks { get; } = new Dictionary<string, Look>
    {
        ["clockVolts"] = new(30),
        ["clockFrequency"] = new(20),
        ["clock"] = new(15),
        ["starts"] = new(8, Less: 3),
        ["failSafe"] = new(4),
        ["endedBy"] = new(25),
        ["contactsFor"] = new(15),
        ["poles"] = new(12),
        ["body"] = new(4),
        ["resistiveAmps"] = new(6, Less: 3),
    };

    public override IReadOnlyList<NamedText> SiteOf(PartFigures old, Place place, Draw draw)
    {
        var timer = (DefrostTimerSpec)old.Part.Spec;
        var there = timer.ClockVolts is { } taps ? ElectricPotential.FromVolts(Math.Round(taps[0].Last.Volts * (1 + place.VoltsOff))) : (ElectricPotential?)null;
        var share = draw.Between(0.4, 0.9);
        return Shape<DefrostTimerSite>.Of.Write(new DefrostTimerSite
        {
            ClockSupplyVolts = there,
            ClockSupplyFrequency = timer.ClockFrequency?[0],
            ReleaseSupplyVolts = timer.ReleaseVolts is null ? null : there,
            StartsNeeded = draw.Of((2, 2), (3, 3), (4, 4)),
            MinutesNeeded = new(Duration.FromMinutes(draw.Whole(18, 35))),
            EndedThereBy = timer.EndedBy is not { } ends ? null : ends.Contains(DefrostEnd.Temperature) ? DefrostEnd.Temperature : ends[0],
            ContactsNeeded = timer.ContactsFor,
            LoadVolts = timer.RatedVolts?[0],
            LoadPhase = Phases.Single,
            Loads = timer.FullLoadAmps is null ? new(ContactLoad.Heater) : new(ContactLoad.Heater, ContactLoad.Motor),
            HeaterAmps = timer.ResistiveAmps is { } heat ? ElectricCurrent.FromAmperes(Math.Round(heat[0].Amperes * share, 1)) : null,
            FanVolts = timer.FullLoadAmps is null ? null : timer.RatedVolts?[0],
            Motors = timer is { FullLoadAmps: { } full, LockedRotorAmps: { } locked } ? new(new MotorLoad(Math.Round(full[0].Amperes * share, 1), Math.Round(locked[0].Amperes * share, 1), 1)) : null,
            Hazard = Hazard.None,
        });
    }

    public override IReadOnlyList<DemoPart> Make(PartNumbers numbers, int seed)
    {
        var draw = new Draw(seed);
        return [.. DefrostTimerLines.All.SelectMany(line => LineParts.Of(line.Share, Programme.DefrostTimers, draw, line.Draw, (spec, maker) => Offer(line, spec, maker, numbers, draw)))];
    }

    private static DemoPart Offer(DefrostTimerLine line, DefrostTimerSpec spec, Maker maker, PartNumbers numbers, Draw draw)
    {
        var discontinued = draw.Chance(DemoPart.DiscontinuedShare);
        var clock = $"{TradeText.Write(spec.ClockVolts!)} {TradeText.Write(spec.ClockFrequency!)}";
        return new(
            numbers.Next(maker),
            maker,
            $"{line.Title}, {clock}, {TradeText.Write(spec.Starts!)}, {TradeText.Write(spec.FailSafe!)}",
            discontinued,
            WithGaps(spec, maker, draw),
            $"{line.Title} {clock}",
            Stock.Price(line.Price, maker, draw),
            Stock.OnHand(discontinued, universal: spec.ClockVolts!.Count > 1, draw));
    }

    /// <summary>Leaves out what catalogues leave out.</summary>
    private static DefrostTimerSpec WithGaps(DefrostTimerSpec spec, Maker maker, Draw draw) => !draw.Chance(maker.GapShare) ? spec : draw.Of(
        (spec with { LockedRotorAmps = null }, 4),
        (spec with { Terminals = null }, 3),
        (spec with { BoxPattern = null }, 3),
        (spec with { PilotDuty = null }, 2),
        (spec with { ReleaseVolts = null, ReleaseFrequency = null }, 2),
        (spec with { ClockFrequency = null }, 1),
        (spec with { Contacts = null }, 1),
        (spec with { FailSafe = null }, 1));
}
