using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Valves.ExpansionValves.Aspects;
using PartsMatch.Fit.Valves.Pipes;

namespace PartsMatch.Fit.Valves.ExpansionValves;

/// <summary>The steps of every expansion valve's job round its changes: no pressure before anything is opened, and the bulb where it feels the pipe.</summary>
internal static class ExpansionValveSteps
{
    /// <summary>What every expansion valve's job is made of.</summary>
    public static JobSteps Of(ExpansionNeed need, ExpansionValveSpec part) => new(
        [
            ValveSteps.LockOut,
            new(Stage.ProveThePart, "see that it is the valve: clear liquid before it, its bulb tight, air over the coil, and no answer to a warm and to a cold bulb", "That was read while it ran, before the lock went on. Most valves that are changed were good: a drier, a charge or a fan was not."),
            new(Stage.NoteWhatIsThere, "note where the bulb sits and how, the equaliser line, and the valve's marking; photograph the distributor", null),
            ValveSteps.Recover(need.Site.Refrigerant),
        ],
        [
            new(Stage.Mount, "put the valve in with its arrow along the flow, a new drier before it", $"{(part.Joint is PipeJoint.Solder or PipeJoint.ButtWeld ? $"Wrap it in wet rags, and let nitrogen flow while it is brazed: {ValveSources.Brazing}." : "Oil the flares, and hold the valve with a second wrench.")} The drier goes wherever the circuit was open."),
            BulbInPlace.GoesIntoWell(part, need.Site)
                ? new(Stage.Mount, "push the bulb to the bottom of its well in the suction pipe, and seal the well against water", "Water that gets in freezes, crushes the bulb, and keeps it from feeling the pipe.")
                : new(Stage.Mount, "strap the bulb tight on clean, level suction pipe, before the equaliser tap, at 4 or 8 o'clock on pipe of 7/8 in and more, and wrap it", "On top of smaller pipe; never on a trap, a coupling or the bottom, where oil lies."),
            .. part.Equaliser == Equaliser.External ? (Step[])[new(Stage.Mount, "join the equaliser line to the suction pipe behind the bulb", "It is never capped: without its pressure the valve starves the coil.")] : [],
            ValveSteps.LeakTest(need.Site.DesignPressure),
            ValveSteps.Evacuate,
            new(Stage.StartAndCheck, "run it until the box is near its temperature, then measure superheat at the bulb: 5 to 15 °F (2.8 to 8.3 K)", "Pipe temperature less dew temperature at the suction pressure there. Clear liquid before it comes first: without it no superheat is true."),
            new(Stage.Record, "write down the valve's number, superheat, suction and condensing pressures, subcooling, the refrigerant added, and the date", null),
        ])
    {
        Kit = [SafeSteps.LockAndTag, ValveSteps.Nitrogen, ValveSteps.LeakDetector, new($"filter-drier for the liquid line"), new($"bulb straps and insulation")],
        Cautions = [SafeSteps.CodesFirst, ValveSteps.Certified, SafeSteps.Ladders, .. ValveSteps.Oil(need.Site.Oil), .. ValveSteps.Refrigerant(null, need.Site.Refrigerant, need.Plate.Refrigerants)],
    };
}
