using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.PressureControls;

/// <summary>The steps of every pressure control's job round its changes: an electrical circuit to make dead and a refrigerant circuit to keep closed.</summary>
internal static class PressureControlSteps
{
    /// <summary>What every such job is made of.</summary>
    public static JobSteps Of(PressureControlNeed need, PressureControlSpec part) => new(
        [
            SafeSteps.LockOut,
            SafeSteps.ProveDead("its terminals", need.Site.LoadVolts is { } volts ? QuantityForms.Volts.Write(volts) : null),
            new(Stage.ProveThePart, "compare the gauge with its setting before it is condemned: open beyond its cut-out it has done its work", "Find why it tripped: a condenser fan that stands still trips the high-pressure control, a leak the low-pressure control."),
            new(Stage.NoteWhatIsThere, "photograph its scales and terminals, and note cut-out and cut-in as they are set", null),
        ],
        [
            new(Stage.Mount, part.Connection == PressureConnection.Braze ? "recover the refrigerant, and braze it in with nitrogen flowing" : "close its valve or recover the refrigerant, and connect it with two wrenches", "Only by those certified for the refrigerant. Coil spare capillary where nothing rubs on it, and test for leaks."),
            new(Stage.Wire, "put each wire back where its mark says", "Never bridge a safety to see whether the rest runs."),
            new(Stage.StartAndCheck, $"make it open by the gauge{At(need.Site.CutOutNeeded)}, and close again{(part.Reset == ContactReset.Manual ? " by its button, once the pressure has come back" : At(need.Site.CutInNeeded))}", "High pressure: block the condenser's air. Low pressure: close the liquid line. The scale is rough: the gauge counts."),
            new(Stage.StartAndCheck, "measure the volts across its closed contacts under load: at most 0.5 V (practice)", null),
            new(Stage.Record, "write down its number, cut-out and cut-in by the gauge, and the date", null),
        ])
    {
        Kit = [SafeSteps.LockAndTag, SafeSteps.Meter, new($"gauges for the refrigerant"), new($"leak detector")],
        Cautions = [SafeSteps.CodesFirst, SafeSteps.Ladders, .. RefrigerantCautions.Of(need.Site.Hazard, need.Site.Refrigerant, opensCircuit: true), SafeSteps.BladesStart, new(Stage.Mount, "Refrigerant under pressure freezes and blinds: goggles and gloves, and only those certified for it open the circuit.")],
    };

    private static string At(UnitsNet.Pressure? pressure) => pressure is { } known ? $" at {QuantityForms.GaugePressure.Write(known)}" : string.Empty;
}
