using PartsMatch.Demo.Outcomes;
using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.Thermostats;
using UnitsNet;

namespace PartsMatch.Demo.Thermostats;

/// <summary>The invented thermostats, fan-delay and defrost-end switches: 280 of them.</summary>
public sealed class ThermostatCatalogue : FamilyCatalogue
{
    public override string Kind => "thermostat";

    public override Shape Shape => Shape<ThermostatSpec>.Of;

    public override int SeedOffset => 7;

    public override string HowDrawn => "Thermostats are drawn by line (box thermostats with a range, fan delays, defrost ends, both in one with three wires, freeze and heater limits): a range brings its differentials and the setting it is shipped at; discs have two temperatures and cannot be set.";

    public override string WhatLacks => "As many thermostats lack one of: the highest temperature at the bulb, whether contacts are open, locked-rotor amps, terminals, pilot duty, differential, what is common, cut-in, capillary; of some bulbs the length is not listed.";

    public override IReadOnlyDictionary<string, Look> Looks { get; } = new Dictionary<string, Look>
    {
        ["function"] = new(20),
        ["action"] = new(20),
        ["reset"] = new(15),
        ["poles"] = new(8),
        ["cutOut"] = new(20),
        ["cutIn"] = new(15),
        ["fanCutOut"] = new(20),
        ["fanCutIn"] = new(15),
        ["range"] = new(8),
        ["bulb"] = new(12),
        ["isAdjustable"] = new(4),
        ["pilotDuty"] = new(5),
        ["fullLoadAmps"] = new(4),
    };

    public override IReadOnlyList<NamedText> SiteOf(PartFigures old, Place place, Draw draw)
    {
        var thermostat = (ThermostatSpec)old.Part.Spec;
        var share = draw.Between(0.4, 0.9);
        var site = new ThermostatSite
        {
            CutOutNeeded = thermostat.CutOut,
            CutInNeeded = thermostat.CutIn,
            FanCutOutNeeded = thermostat.FanCutOut,
            FanCutInNeeded = thermostat.FanCutIn,
            BulbRoom = thermostat.BulbLength is { } bulb ? bulb + Length.FromInches(0.5) : null,
            LoadVolts = thermostat.RatedVolts?[0],
            LoadPhase = Phases.Single,
            Refrigerant = TradeText.Read<RefrigerantList>(draw.Pick(["R-404A", "R-134a", "R-448A"]))[0],
            Hazard = Hazard.None,
        };
        var loaded = thermostat switch
        {
            { FullLoadAmps: { } full, LockedRotorAmps: { } locked } when draw.Chance(0.5) => site with { Loads = new(ContactLoad.Motor), Motors = new(new MotorLoad(Math.Round(full[0].Amperes * share, 1), Math.Round(locked[0].Amperes * share, 1), 1)) },
            { ResistiveAmps: { } heat } when draw.Chance(0.6) => site with { Loads = new(ContactLoad.Heater), HeaterAmps = ElectricCurrent.FromAmperes(Math.Round(heat[0].Amperes * share, 1)) },
            _ => site with { Loads = new(ContactLoad.Coil), CoilsVa = ElectricApparentPower.FromVoltamperes(draw.Whole(8, 25)) },
        };
        return Shape<ThermostatSite>.Of.Write(thermostat.FanFullLoadAmps is { } fans
            ? loaded with { FanVolts = thermostat.FanRatedVolts?[0], FanMotors = new(new MotorLoad(Math.Round(fans[0].Amperes * share, 1), Math.Round((thermostat.FanLockedRotorAmps?[0].Amperes ?? fans[0].Amperes * 5) * share, 1), 1)) }
            : loaded);
    }

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
