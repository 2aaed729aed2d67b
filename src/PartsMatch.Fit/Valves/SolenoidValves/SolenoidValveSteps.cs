using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Valves.Pipes;

namespace PartsMatch.Fit.Valves.SolenoidValves;

/// <summary>The steps of every solenoid valve's job round its changes: no pressure and no power before anything is opened.</summary>
internal static class SolenoidValveSteps
{
    /// <summary>What every solenoid valve's job is made of.</summary>
    public static JobSteps Of(SolenoidNeed need, SolenoidValveSpec part) => new(
        [
            ValveSteps.LockOut,
            SafeSteps.ProveDead("the coil's leads", need.Site.CoilSupplyVolts is { } volts ? FormattableString.Invariant($"{volts.Volts:0.#} V") : need.Plate.CoilVolts is { } marked ? $"{Deducing.Text(marked)} by the old coil's marking" : null),
            new(Stage.ProveThePart, "measure the ohms of the coil, leads off", "That there were volts at it, and whether its magnet pulled, was seen before the lock went on. A coil that is open or shorted is changed by itself, and the pipes stay shut, where the valve's body takes the same coil."),
            new(Stage.NoteWhatIsThere, "photograph the valve with its arrow, and mark the coil's leads", null),
            ValveSteps.Recover(need.Site.Refrigerant),
        ],
        [
            new(Stage.Mount, "put the valve in with its arrow along the flow and its coil upright or level", $"Dirt settles in a stem that hangs down. {(part.Joint == PipeJoint.Solder || part.Joint == PipeJoint.ButtWeld ? $"Take it apart or wrap it in wet rags, and let nitrogen flow while it is brazed: {ValveSources.Brazing}." : "Oil the flares, and hold the valve with a second wrench.")}"),
            ValveSteps.LeakTest(need.Site.DesignPressure),
            ValveSteps.Evacuate,
            new(Stage.Wire, "put the coil down on its stem with its nut, then join its leads", "An energised coil off its stem burns within minutes."),
            new(Stage.StartAndCheck, "call for it: it clicks, and in a liquid line the pipe is as warm behind it as before it; let it go: the flow stops", "A pipe 3 °F (1.7 K) colder behind than before it tells a valve that is not quite open, or too small."),
            .. need.Site.Line == RefrigerantLine.Liquid ? (Step[])[new(Stage.StartAndCheck, "see clear liquid before the expansion valve at full load", "What is lost in this valve, and lost and lifted behind it, all comes out of the subcooling at its inlet.")] : [],
            new(Stage.Record, "write down the valve's and the coil's numbers, the volts at the coil, the refrigerant added, and the date", null),
        ])
    {
        Kit = [SafeSteps.LockAndTag, SafeSteps.Meter, ValveSteps.Nitrogen, ValveSteps.LeakDetector],
        Cautions = [SafeSteps.CodesFirst, ValveSteps.Certified, SafeSteps.Ladders, .. ValveSteps.Oil(need.Site.Oil), .. ValveSteps.Refrigerant(need.Site.Hazard, need.Site.Refrigerant, need.Plate.Refrigerants)],
    };
}
