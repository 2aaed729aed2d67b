using PartsMatch.Demo.Outcomes;
using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.PressureControls;
using UnitsNet;

namespace PartsMatch.Demo.PressureControls;

/// <summary>The invented pressure controls: 300 of them.</summary>
public sealed class PressureControlCatalogue : FamilyCatalogue
{
    public override string Kind => "pressureControl";

    public override Shape Shape => Shape<PressureControlSpec>.Of;

    public override int SeedOffset => 3;

    public override string HowDrawn => "Pressure controls are drawn by line (high and low pressure with a range, fan cycling, fixed discs): a range brings its differentials, the setting it is shipped at and the pressure it bears; discs have one differential and switch coils alone.";

    public override IReadOnlyDictionary<string, Look> Looks { get; } = new Dictionary<string, Look> { ["function"] = new(20), ["action"] = new(20), ["reset"] = new(10), ["poles"] = new(8), ["range"] = new(8), ["cutOut"] = new(12), ["cutIn"] = new(8), ["isAdjustable"] = new(4), ["pressureMost"] = new(4) };

    public override IReadOnlyList<NamedText> SiteOf(PartFigures old, Place place, Draw draw)
    {
        var control = (PressureControlSpec)old.Part.Spec;
        return Shape<PressureControlSite>.Of.Write(new PressureControlSite
        {
            Loads = new(ContactLoad.Coil),
            LoadVolts = ElectricPotential.FromVolts(draw.Pick<double>([24, 120, 240])),
            CoilsVa = ElectricApparentPower.FromVoltamperes(draw.Whole(8, 40)),
            Hazard = Hazard.None,
            CutOutNeeded = control.CutOut,
            CutInNeeded = control.CutIn,
            TestPressure = control.PressureMost * draw.Between(0.7, 0.95),
            Refrigerant = TradeText.Read<RefrigerantList>(draw.Pick(["R-404A", "R-134a", "R-410A"]))[0],
        });
    }

    public override string WhatLacks => "As many pressure controls lack one of: wetted materials, highest pressure, locked-rotor amps, differential, pilot duty, connection, whether contacts are open.";

    public override IReadOnlyList<DemoPart> Make(PartNumbers numbers, int seed)
    {
        var draw = new Draw(seed);
        return [.. PressureControlLines.All.SelectMany(line => LineParts.Of(line.Share, Programme.PressureControls, draw, line.Draw, (spec, maker) => Offer(line, spec, maker, numbers, draw)))];
    }

    private static DemoPart Offer(PressureControlLine line, PressureControlSpec spec, Maker maker, PartNumbers numbers, Draw draw)
    {
        var discontinued = draw.Chance(DemoPart.DiscontinuedShare);
        var reset = spec.Reset == ContactReset.Manual ? "manual reset" : "automatic reset";
        var setting = spec.Range is { } range ? TradeText.Write(range) : TradeText.Write(spec.CutOut!.Value);
        return new(
            numbers.Next(maker),
            maker,
            $"{line.Title}, {setting}, {reset}, {TradeText.Write(spec.Connection!.Value)}",
            discontinued,
            WithGaps(spec, maker, draw),
            $"{line.Title} {setting} {reset}",
            Stock.Price(line.Price, maker, draw),
            Stock.OnHand(discontinued, universal: spec.IsAdjustable == true, draw));
    }

    /// <summary>Leaves out what catalogues leave out.</summary>
    private static PressureControlSpec WithGaps(PressureControlSpec spec, Maker maker, Draw draw) => !draw.Chance(maker.GapShare) ? spec : draw.Of(
        (spec with { Materials = null }, 4),
        (spec with { PressureMost = null }, 3),
        (spec with { LockedRotorAmps = null }, 3),
        (spec with { Contacts = null }, 2),
        (spec with { Differential = null }, 2),
        (spec with { PilotDuty = null }, 2),
        (spec with { Connection = null }, 1));
}
