using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.Thermostats;

namespace PartsMatch.Demo.Thermostats;

/// <summary>The invented thermostats, fan-delay and defrost-end switches: 280 of them.</summary>
public sealed class ThermostatCatalogue : FamilyCatalogue
{
    public override string Kind => "thermostat";

    public override Shape Shape => Shape<ThermostatSpec>.Of;

    public override int SeedOffset => 7;

    public override string HowDrawn => "Thermostats are drawn by line (box thermostats with a range, fan delays, defrost ends, both in one with three wires, freeze and heater limits): a range brings its differentials and the setting it is shipped at; discs have two temperatures and cannot be set.";

    public override string WhatLacks => "As many thermostats lack one of: the highest temperature at the bulb, whether contacts are open, locked-rotor amps, terminals, pilot duty, differential, what is common, cut-in, capillary.";

    public override IReadOnlyList<DemoPart> Make(PartNumbers numbers, int seed)
    {
        var draw = new Draw(seed);
        return [.. ThermostatLines.All.SelectMany(line => LineParts.Of(line.Share, Programme.Thermostats, draw, line.Draw, (spec, maker) => Offer(line, spec, maker, numbers, draw)))];
    }

    private static DemoPart Offer(ThermostatLine line, ThermostatSpec spec, Maker maker, PartNumbers numbers, Draw draw)
    {
        var discontinued = draw.Chance(DemoPart.DiscontinuedShare);
        var setting = spec.Range is { } range ? TradeText.Write(range) : $"opens {TradeText.Write(spec.CutOut!.Value)}";
        var reset = spec.Reset == ContactReset.Manual ? ", manual reset" : string.Empty;
        return new(
            numbers.Next(maker),
            maker,
            $"{line.Title}, {setting}{reset}, {TradeText.Write(spec.Bulb!.Value)}",
            discontinued,
            WithGaps(spec, maker, draw),
            $"{line.Title} {setting}{reset}",
            Stock.Price(line.Price, maker, draw),
            Stock.OnHand(discontinued, universal: spec.IsAdjustable == true, draw));
    }

    /// <summary>Leaves out what catalogues leave out.</summary>
    private static ThermostatSpec WithGaps(ThermostatSpec spec, Maker maker, Draw draw) => !draw.Chance(maker.GapShare) ? spec : draw.Of(
        (spec with { BulbMost = null }, 4),
        (spec with { Contacts = null }, 3),
        (spec with { LockedRotorAmps = null }, 2),
        (spec with { Terminals = null }, 2),
        (spec with { PilotDuty = null }, 2),
        (spec with { Differential = null }, 2),
        (spec with { Common = null }, 2),
        (spec with { CutIn = null }, 1),
        (spec with { Capillary = null }, 1));
}
