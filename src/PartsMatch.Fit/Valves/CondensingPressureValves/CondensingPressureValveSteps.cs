using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Valves.CondensingPressureValves.Aspects;
using PartsMatch.Fit.Valves.Pipes;

namespace PartsMatch.Fit.Valves.CondensingPressureValves;

/// <summary>The steps of every condensing-pressure valve's job round its changes.</summary>
internal static class CondensingPressureValveSteps
{
    /// <summary>What every such job is made of.</summary>
    public static JobSteps Of(HeadNeed need, CondensingPressureValveSpec part) => new(
        [
            ValveSteps.LockOut,
            Prove(HowOf(need, part)),
            new(Stage.NoteWhatIsThere, "mark each pipe by its function: from the condenser, from the hot gas line, to the receiver", "Photograph the marks at the ports: changed over, the valve works the wrong way round."),
            ValveSteps.Recover(need.Site.Refrigerant),
        ],
        [
            new(Stage.Mount, "put the valve in, each port on the pipe of its function", $"{(part.Joint is PipeJoint.Solder or PipeJoint.ButtWeld ? $"Wrap it in wet rags, and let nitrogen flow while it is brazed: {ValveSources.Brazing}." : "Hold the valve with a second wrench.")}{(HowOf(need, part) is null or Arrangement.ThreeWay ? " A gas-charged dome that gets too hot loses its charge." : string.Empty)}"),
            ValveSteps.LeakTest(need.Site.DesignPressure),
            ValveSteps.Evacuate,
            See(HowOf(need, part), HeadSetting.SetThere(part, need.Site) ?? need.Site.SettingNeeded?.Kilopascals, need.Site.LeastAmbient?.DegreesCelsius),
            new(Stage.Record, "write down the valve's number and setting, the head, the air's temperature, the charge added, and the date", null),
        ])
    {
        Kit = [SafeSteps.LockAndTag, ValveSteps.Nitrogen, ValveSteps.LeakDetector, new($"filter-drier for the liquid line")],
        Cautions = [SafeSteps.CodesFirst, ValveSteps.Certified, SafeSteps.Ladders, .. ValveSteps.Oil(need.Site.Oil), .. ValveSteps.Refrigerant(null, need.Site.Refrigerant, need.Plate.Refrigerants)],
    };

    private static Arrangement? HowOf(HeadNeed need, CondensingPressureValveSpec part) => part.Arrangement ?? need.Site.NeedsArrangement;

    private static Step Prove(Arrangement? how) => how == Arrangement.DifferentialCheck
        ? new(Stage.ProveThePart, "see that it is the valve: the difference between the hot gas and the receiver beside its setting, and whether the by-pass was hot", "That was read while it ran, before the lock went on. Below its setting the by-pass is cold, above it hot.")
        : new(Stage.ProveThePart, "see that it is the valve: the head beside its setting, and whether the by-pass was hot", "That was read while it ran, before the lock went on. A system short of charge floods no condenser.");

    /// <summary>A head is held with a charge that floods; a difference opens with none.</summary>
    private static Step See(Arrangement? how, double? setting, double? ambient) => how == Arrangement.DifferentialCheck
        ? new(Stage.StartAndCheck, $"see that hot gas goes by only above a difference{(setting is { } opens ? $" of {new ShownPressure(opens)}" : string.Empty)} between the hot gas and the receiver", "In the cold the regulator beside it throttles and the by-pass is hot; on a warm day that one is wide open, and the by-pass stays cold.")
        : new(Stage.StartAndCheck, $"charge it with what floods the condenser at the least ambient{(ambient is { } coldest ? $", {new ShownTemperature(coldest)}" : string.Empty)}, and see the head at its setting{(setting is { } holds ? $", {new ShownPressure(holds)}" : string.Empty)}", "By the unit's papers, by weight. On a warm day block part of the condenser's air to see it work; by-pass hot below the setting, cold well above it.");
}
