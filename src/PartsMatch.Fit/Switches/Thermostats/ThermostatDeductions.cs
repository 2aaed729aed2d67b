using PartsMatch.Fit.Ignition;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.Thermostats.Aspects;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>What follows from a thermostat's plate, and for its place.</summary>
public static class ThermostatDeductions
{
    /// <summary>What follows from its function and its temperatures; of cut-in, cut-out and differential two tell the third.</summary>
    public static (ThermostatSpec Spec, IReadOnlyList<Deduction> Deductions) Deduce(ThermostatSpec spec) => Deducing.Apply(spec, ActionByTemperatures, ActionByFunction, ByDefault, CannotBeSet, Third);

    /// <summary>What the old one tells of its place, and what follows from what is on it.</summary>
    public static (ThermostatSite Site, IReadOnlyList<Deduction> Deductions) DeduceSite(ThermostatSpec plate, ThermostatSite site) =>
        Deducing.Apply(site, there => BurningRefrigerant.Hazard(there.Refrigerant), ContactDeductions.HeaterVolts, ContactDeductions.HeaterAmps, ContactDeductions.Loads, _ => AsTheOldOne(plate));

    /// <summary>What opens above where it closes opens on rise, whatever its function mostly does: a thermostat may be for heat. Of three wires, or one whose function is not known and may be such, the temperatures tell nothing.</summary>
    private static IEnumerable<Deduction> ActionByTemperatures(ThermostatSpec spec)
    {
        if (spec.Function is null or ThermostatFunction.FanDelayAndDefrostEnd) yield break;
        if (Degrees.In(spec.CutOut) is not { } opens || Degrees.In(spec.CutIn) is not { } closes || opens.Equals(closes)) yield break;
        yield return new(Side.Plate, "action", Deducing.Text(opens > closes ? ThermostatAction.OpensOnRise : ThermostatAction.ClosesOnRise), "where it opens and closes", ["cutOut", "cutIn"], ThermostatSources.Differential);
    }

    /// <summary>What contacts of a function mostly do; null of a defrost end, which may open or close.</summary>
    internal static ThermostatAction? ActionOf(ThermostatFunction? function) => function switch
    {
        ThermostatFunction.Box or ThermostatFunction.LowLimit => ThermostatAction.ClosesOnRise,
        ThermostatFunction.FanDelay or ThermostatFunction.HighLimit => ThermostatAction.OpensOnRise,
        ThermostatFunction.FanDelayAndDefrostEnd => ThermostatAction.ChangeOver,
        _ => null,
    };

    private static IEnumerable<Deduction> ActionByFunction(ThermostatSpec spec)
    {
        if (ActionOf(spec.Function) is { } known) yield return new(Side.Plate, "action", Deducing.Text(known), $"it is a {Deducing.Text(spec.Function!.Value)}", ["function"], ThermostatSources.ActionOfFunction);
    }

    private static IEnumerable<Deduction> ByDefault(ThermostatSpec spec)
    {
        if (spec.Function is not { } function) yield break;
        yield return new(Side.Plate, "poles", "1", "no more are marked", ["function"], ThermostatSources.Poles);
        if (function is ThermostatFunction.LowLimit or ThermostatFunction.HighLimit) yield break;
        yield return new(Side.Plate, "reset", Deducing.Text(ContactReset.Automatic), $"it is a {Deducing.Text(function)}", ["function"], ThermostatSources.ResetsByItself);
    }

    private static IEnumerable<Deduction> CannotBeSet(ThermostatSpec spec)
    {
        if (spec.Range is not null) yield return new(Side.Plate, "isAdjustable", "yes", "its range", ["range"], ThermostatSources.Temperatures);
        else if (FormOfBulb.IsDisc(spec.Bulb)) yield return new(Side.Plate, "isAdjustable", "no", "it is a disc", ["bulb"], ThermostatSources.Temperatures);
    }

    /// <summary>Cut-out = cut-in + differential where it opens on rise, cut-in − differential where it closes on rise; and the reverse. Only of a differential that is one figure.</summary>
    private static IEnumerable<Deduction> Third(ThermostatSpec spec)
    {
        if (spec.Action is not { } action || spec.Differential is not { IsOne: true, Low: var between }) yield break;
        var sign = action == ThermostatAction.OpensOnRise ? 1 : -1;
        if (spec is { CutIn: { } cutIn, CutOut: null }) yield return new(Side.Plate, "cutOut", Deducing.Text(Sum(cutIn, sign, between)), "its cut-in and differential", ["cutIn", "differential"], ThermostatSources.Differential);
        if (spec is { CutOut: { } cutOut, CutIn: null }) yield return new(Side.Plate, "cutIn", Deducing.Text(Sum(cutOut, -sign, between)), "its cut-out and differential", ["cutOut", "differential"], ThermostatSources.Differential);
    }

    private static IEnumerable<Deduction> AsTheOldOne(ThermostatSpec plate)
    {
        foreach (var (temperature, field) in new[] { (plate.CutOut, "cutOut"), (plate.CutIn, "cutIn"), (plate.FanCutOut, "fanCutOut"), (plate.FanCutIn, "fanCutIn") })
        {
            if (temperature is { } known) yield return new(Side.Site, $"{field}Needed", Deducing.Text(known), "the old one's", [field], ContactSources.AsTheOldOne);
        }
    }

    private static Temperature Sum(Temperature from, int sign, TemperatureDelta by)
    {
        var unit = from.Unit == UnitsNet.Units.TemperatureUnit.DegreeFahrenheit ? by.DegreesFahrenheit : by.Kelvins;
        return Temperature.From(Math.Round((double)from.Value + (sign * unit), 6), from.Unit);
    }
}
