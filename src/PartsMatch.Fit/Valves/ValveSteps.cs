using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Valves;

/// <summary>Steps of every job that opens a refrigerant circuit.</summary>
internal static class ValveSteps
{
    /// <summary>The circuit that drives it is off and stays off.</summary>
    public static Step LockOut { get; } = new(
        Stage.MakeSafe,
        "open the disconnect of the unit and of the control circuit, lock them and tag them",
        $"A control circuit may be fed from elsewhere than its unit. {SafetySources.LockOut}; {SafetySources.ControlsIsolateNothing}.");

    /// <summary>Nothing is left under pressure before it is opened.</summary>
    public static Caution Certified { get; } = new(
        Stage.MakeSafe,
        "Refrigerant under pressure freezes, bursts and suffocates: glasses and gloves on, the place aired. Circuits are opened only by those certified for it, and refrigerant is recovered, never let out.");

    /// <summary>What to mind of an oil that takes up water from the air (from memory); none of one that hardly does, or that is not known.</summary>
    /// <param name="oil">What goes round there; null where not known.</param>
    public static IEnumerable<Caution> Oil(Oil? oil) => oil is Valves.Oil.Polyolester or Valves.Oil.PolyvinylEther or Valves.Oil.PolyalkyleneGlycol
        ? [new(Stage.Mount, FormattableString.Invariant($"There is {new Spelt<Oil>(oil.Value)}, which takes up water from the air within minutes: caps stay on the valve and the drier until they go in, and open pipes are plugged (practice)."))]
        : [];

    /// <summary>What to mind of the refrigerant there, or of each that may be there.</summary>
    /// <param name="hazard">What could burn there; null when nobody said.</param>
    /// <param name="there">The refrigerant that was read; null where not known.</param>
    /// <param name="old">What the old valve lists; null where not given.</param>
    public static IEnumerable<Caution> Refrigerant(Hazard? hazard, Refrigerant? there, RefrigerantList? old) =>
        [.. RefrigerantCautions.Of(hazard, null, opensCircuit: true), .. RefrigerantThere.Possible(there, old).SelectMany(one => RefrigerantCautions.Of(null, one, opensCircuit: true))];

    /// <summary>To flow through while brazing, and to test with.</summary>
    public static KitItem Nitrogen { get; } = new($"dry nitrogen with its regulator");

    /// <summary>To find what leaks.</summary>
    public static KitItem LeakDetector { get; } = new($"leak detector for the refrigerant, or soap");

    /// <summary>No moisture, no air.</summary>
    public static Step Evacuate { get; } = new(
        Stage.FirstStart,
        "evacuate to 500 microns (0.067 kPa) and see that it holds",
        "Valved off from the pump, it may rise to 1000 microns within 10 minutes and then stand (practice). A pressure that keeps rising is a leak, one that stops higher is moisture.");

    /// <summary>The part of the circuit is without pressure.</summary>
    /// <param name="refrigerant">What is in it; null where not known.</param>
    public static Step Recover(Refrigerant? refrigerant) => new(
        Stage.Mount,
        $"pump down or recover the {(refrigerant is null ? "refrigerant" : refrigerant.Name)} on both sides of the valve, and see that the gauge stays at zero before anything is opened",
        $"Liquid shut in between two valves bursts pipes when it warms up: leave it a way out. {ValveSources.Certified}.");

    /// <summary>Tight before anything goes in.</summary>
    /// <param name="design">The design pressure there; null where not known.</param>
    public static Step LeakTest(Pressure? design) => new(
        Stage.FirstStart,
        $"test for leaks with dry nitrogen, at most {(design is { } pressure ? FormattableString.Invariant($"the {pressure.PoundsForcePerSquareInch:0} psi ({pressure.Kilopascals:0} kPa) of the plate") : "the pressure on the unit's plate")}",
        "Nitrogen through a regulator, never oxygen or air: oil explodes in them. Soap or a detector at every joint that was made.");
}
