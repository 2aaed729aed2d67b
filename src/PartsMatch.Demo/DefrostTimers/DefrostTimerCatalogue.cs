using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.DefrostTimers;

namespace PartsMatch.Demo.DefrostTimers;

/// <summary>The invented defrost timers: 120 of them.</summary>
public sealed class DefrostTimerCatalogue : FamilyCatalogue
{
    public override string Kind => "defrostTimer";

    public override Shape Shape => Shape<DefrostTimerSpec>.Of;

    public override int SeedOffset => 8;

    public override string HowDrawn => "Defrost timers are drawn by line (24-hour clocks with release solenoid in a box or as a mechanism, those of reach-ins that count running time, two-pole ones with fan delay and pump-down, pressure-ended ones, and 50 Hz ones): a line brings its programme, its contacts and the marks of its terminals; the clock's volts are drawn, and the release solenoid's are the same.";

    public override string WhatLacks => "As many defrost timers lack one of: locked-rotor amps, terminals, box pattern, pilot duty, release volts, the clock's frequency, whether contacts are open, fail-safe. Volts of a release solenoid that are not given follow from the clock's where that is for one voltage.";

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
