using PartsMatch.Fit.Ignition;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.Thermostats.Aspects;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>What follows from a thermostat's plate, and for its place.</summary>
public static class ThermostatDeductions
{
    /// <summary>What follows from its three wires, its range or its disc, and from its temperatures, of which two tell the third: for a catalogue part as well, so that nothing is among it that only mostly holds.</summary>
    public static (ThermostatSpec Spec, IReadOnlyList<Deduction> Deductions) Deduce(ThermostatSpec spec) => Deducing.Apply(spec, ThreeWires, CanBeSet, one => Third(one, Side.Plate, one.MarkedWay, "its"));

    /// <summary>What the old one tells of its place, and what follows from what is on it. The third of its temperatures follows from the side of its contacts that is wired, or from what they are taken to do, too.</summary>
    public static (ThermostatSite Site, IReadOnlyList<Deduction> Deductions) DeduceSite(ThermostatSpec plate, ThermostatSite site) =>
        Deducing.Apply(site, there => BurningRefrigerant.Hazard(there.Refrigerant), ContactDeductions.HeaterVolts, ContactDeductions.HeaterAmps, ContactDeductions.Loads, there => AsTheOldOne(plate, there), there => ThirdOfTaken(plate, there));

    /// <summary>Three wires are a common one and one to either side.</summary>
    private static IEnumerable<Deduction> ThreeWires(ThermostatSpec spec)
    {
        if (spec.Function == ThermostatFunction.FanDelayAndDefrostEnd) yield return new(Side.Plate, "action", Deducing.Text(ThermostatAction.ChangeOver), "it has three wires", ["function"], ThermostatSources.ThreeWires);
    }

    private static IEnumerable<Deduction> CanBeSet(ThermostatSpec spec)
    {
        if (spec.Range is { } range) yield return new(Side.Plate, "isAdjustable", Deducing.Text(!range.Celsius.IsExact), "its range", ["range"], ThermostatSources.Temperatures);
        else if (FormOfBulb.IsDisc(spec.Bulb)) yield return new(Side.Plate, "isAdjustable", "no", "it is a disc", ["bulb"], ThermostatSources.Temperatures);
    }

    /// <summary>The third of an old one's temperatures, where its plate does not say which way its contacts go: the way of its function where that leaves but one, else of the side that is wired, or what most do where nothing tells. Of change-over contacts either side may be meant. Beside another one than is marked nothing follows.</summary>
    internal static IEnumerable<Deduction> ThirdOfTaken(ThermostatSpec plate, ThermostatSite site)
    {
        if (Degrees.AreOthers(plate.CutOut, site.CutOutNeeded) || Degrees.AreOthers(plate.CutIn, site.CutInNeeded)) return [];
        if (site.WiredSide is { } side && !TakenOfTheOldOne.HasOneWay(plate.Function)) return Third(plate, Side.Site, side, "the side that is wired, and its");
        return TakenOfTheOldOne.ActionOf(plate.Function) is { } mostly && (TakenOfTheOldOne.HasOneWay(plate.Function) || (plate.Action is null && site.Wired is null))
            ? Third(plate, Side.Site, mostly, $"what a {Deducing.Text(plate.Function!.Value)} mostly does, and its")
            : [];
    }

    /// <summary>Cut-out = cut-in + differential where it opens on rise, cut-in − differential where it closes on rise; and the reverse. Only of a differential that is one figure.</summary>
    private static IEnumerable<Deduction> Third(ThermostatSpec spec, Side side, ThermostatAction? action, string because)
    {
        if (action is not { } known || spec.Differential is not { IsOne: true, Low: var between }) yield break;
        var sign = known == ThermostatAction.OpensOnRise ? 1 : -1;
        var needed = side == Side.Site ? "Needed" : string.Empty;
        if (spec is { CutIn: { } cutIn, CutOut: null }) yield return new(side, $"cutOut{needed}", Deducing.Text(Sum(cutIn, sign, between)), $"{because} cut-in and differential", ["cutIn", "differential"], ThermostatSources.Differential);
        if (spec is { CutOut: { } cutOut, CutIn: null }) yield return new(side, $"cutIn{needed}", Deducing.Text(Sum(cutOut, -sign, between)), $"{because} cut-out and differential", ["cutOut", "differential"], ThermostatSources.Differential);
    }

    private static IEnumerable<Deduction> AsTheOldOne(ThermostatSpec plate, ThermostatSite site) =>
    [
        .. OldSetting.AsNeeded(
            Old("cutOut", plate.CutOut, Degrees.AreOthers(plate.CutOut, site.CutOutNeeded) || IsBesideDifferential(plate, plate.CutIn, site.CutOutNeeded)),
            Old("cutIn", plate.CutIn, Degrees.AreOthers(plate.CutIn, site.CutInNeeded) || IsBesideDifferential(plate, plate.CutOut, site.CutInNeeded))),
        .. OldSetting.AsNeeded(
            Old("fanCutOut", plate.FanCutOut, Degrees.AreOthers(plate.FanCutOut, site.FanCutOutNeeded)),
            Old("fanCutIn", plate.FanCutIn, Degrees.AreOthers(plate.FanCutIn, site.FanCutInNeeded))),
    ];

    /// <summary>Whether what is needed is another temperature than an old one had that is marked with its other one alone: over 5 °F beside what its only differential leaves, whichever way its contacts go.</summary>
    internal static bool IsBesideDifferential(ThermostatSpec plate, Temperature? other, Temperature? needed) =>
        (plate.CutOut is null || plate.CutIn is null) && plate.Differential is { IsOne: true, Kelvins.Low: var between } && Degrees.In(other) is { } marked && Degrees.In(needed) is { } asked && !Degrees.AreNear(Degrees.Between(marked, asked), between);

    private static OldSetting Old(string field, Temperature? marked, bool isChanged) => new(field, marked is { } known ? Deducing.Text(known) : null, "the old one's", isChanged);

    private static Temperature Sum(Temperature from, int sign, TemperatureDelta by)
    {
        var unit = from.Unit == UnitsNet.Units.TemperatureUnit.DegreeFahrenheit ? by.DegreesFahrenheit : by.Kelvins;
        return Temperature.From(Math.Round((double)from.Value + (sign * unit), 6), from.Unit);
    }
}
