using PartsMatch.Fit.Ignition;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.PressureControls.Aspects;
using UnitsNet;

namespace PartsMatch.Fit.Switches.PressureControls;

/// <summary>What follows from a pressure control's plate, and for its place.</summary>
public static class PressureControlDeductions
{
    /// <summary>What follows from its range, and from cut-in, cut-out and differential, of which two tell the third: for a catalogue part as well, so that nothing is among it that only mostly holds.</summary>
    public static (PressureControlSpec Spec, IReadOnlyList<Deduction> Deductions) Deduce(PressureControlSpec spec) => Deducing.Apply(spec, CannotBeSet, Third);

    /// <summary>What the old one tells of its place, and what follows from what is on it.</summary>
    public static (PressureControlSite Site, IReadOnlyList<Deduction> Deductions) DeduceSite(PressureControlSpec plate, PressureControlSite site) =>
        Deducing.Apply(site, there => BurningRefrigerant.Hazard(there.Refrigerant), ContactDeductions.HeaterVolts, ContactDeductions.HeaterAmps, ContactDeductions.Loads, there => AsTheOldOne(plate, there));

    private static IEnumerable<Deduction> CannotBeSet(PressureControlSpec spec)
    {
        if (spec.Range is { } range) yield return new(Side.Plate, "isAdjustable", Deducing.Text(!range.Low.Equals(range.High, Pressure.Zero)), "its range", ["range"], PressureControlSources.Settings);
    }

    /// <summary>Cut-in = cut-out + differential where it opens on fall, cut-out − differential where it opens on rise; and the reverse. Only of a differential that is one figure: of one that can be set, cut-out and cut-in tell how it is set, and not how it could be.</summary>
    private static IEnumerable<Deduction> Third(PressureControlSpec spec)
    {
        if (spec.Running is not { } running) yield break;
        var sign = running == PressureAction.OpensOnFall ? 1 : -1;
        switch (spec)
        {
            case { CutOut: { } cutOut, CutIn: null, Differential: { } between } when IsOne(between):
                yield return new(Side.Plate, "cutIn", Deducing.Text(Sum(cutOut, sign, between.Low)), "its cut-out and differential", ["cutOut", "differential"], PressureControlSources.Differential);
                break;
            case { CutIn: { } cutIn, CutOut: null, Differential: { } between } when IsOne(between):
                yield return new(Side.Plate, "cutOut", Deducing.Text(Sum(cutIn, -sign, between.Low)), "its cut-in and differential", ["cutIn", "differential"], PressureControlSources.Differential);
                break;
            case { CutOut: { } cutOut, CutIn: { } cutIn, Differential: null, IsAdjustable: false } when sign * (cutIn.Kilopascals - cutOut.Kilopascals) > 0:
                var distance = Distance(cutOut, cutIn);
                yield return new(Side.Plate, "differential", Deducing.Text(new PressureSpan(distance, distance)), "its cut-out and cut-in, neither of which can be set", ["cutOut", "cutIn", "isAdjustable"], PressureControlSources.Differential);
                break;
        }
    }

    private static IEnumerable<Deduction> AsTheOldOne(PressureControlSpec plate, PressureControlSite site) => OldSetting.AsNeeded(
        new("cutOut", plate.CutOut is { } cutOut ? Deducing.Text(cutOut) : null, "the old one's cut-out", Settings.AreOthers(plate.CutOut, site.CutOutNeeded)),
        new("cutIn", plate.CutIn is { } cutIn ? Deducing.Text(cutIn) : null, "the old one's cut-in", Settings.AreOthers(plate.CutIn, site.CutInNeeded)));

    private static bool IsOne(PressureSpan span) => span.Low.Equals(span.High, Pressure.Zero);

    /// <summary>In the unit of one of them that is not for a vacuum, or else in psi, for a distance is above zero.</summary>
    private static Pressure Distance(Pressure one, Pressure other)
    {
        var unit = new[] { other.Unit, one.Unit }.FirstOrDefault(unit => unit != UnitsNet.Units.PressureUnit.InchOfMercury, UnitsNet.Units.PressureUnit.PoundForcePerSquareInch);
        return Pressure.From(Math.Round(Math.Abs(one.As(unit) - other.As(unit)), 6), unit);
    }

    /// <summary>In the setting's unit; beside a vacuum in the differential's, for what comes out may be above zero, where nobody counts in inches of mercury.</summary>
    private static Pressure Sum(Pressure from, int sign, Pressure by)
    {
        var unit = from.Unit == UnitsNet.Units.PressureUnit.InchOfMercury ? by.Unit : from.Unit;
        return Pressure.From(Math.Round(from.As(unit) + (sign * by.As(unit)), 6), unit);
    }
}
