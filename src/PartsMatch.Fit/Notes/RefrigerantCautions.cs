using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Physics;

namespace PartsMatch.Fit.Notes;

/// <summary>What to mind of a refrigerant, and of a place where something could burn: the same for every family.</summary>
internal static class RefrigerantCautions
{
    private const string CarbonDioxide = "R-744";

    /// <summary>The cautions; none where nothing is known to burn or to harm.</summary>
    /// <param name="hazard">What could burn there; null when nobody said.</param>
    /// <param name="refrigerant">What is in the circuit; null when not known.</param>
    /// <param name="opensCircuit">Whether the job opens the refrigerant circuit.</param>
    public static IEnumerable<Caution> Of(Hazard? hazard, Refrigerant? refrigerant, bool opensCircuit) =>
    [
        .. HazardCautions.Of(hazard, opensCircuit),
        .. refrigerant is null ? [] : OfClass(refrigerant, opensCircuit),
        .. refrigerant?.Name == CarbonDioxide ? OfCarbonDioxide(opensCircuit) : [],
    ];

    /// <summary>By its class of ASHRAE 34: a letter B is toxic, any figure but 1 burns.</summary>
    private static IEnumerable<Caution> OfClass(Refrigerant refrigerant, bool opensCircuit)
    {
        if (refrigerant.IsFlammable && opensCircuit) yield return new(Stage.MakeSafe, $"{refrigerant.Name} burns (class {refrigerant.SafetyClass}): recover it, flush with nitrogen, air the place and keep flames away before anything is opened or brazed.");
        if (!refrigerant.IsToxic) yield break;
        yield return new(Stage.MakeSafe, $"{refrigerant.Name} is toxic (class {refrigerant.SafetyClass}): leave as soon as its detector sounds or it smells, against the wind, and come back only with breathing apparatus (practice).");
        if (opensCircuit) yield return new(Stage.MakeSafe, $"Nothing with {refrigerant.Name} in it is opened by one alone: a mask for it, goggles and gloves on, water for the eyes at hand, and somebody outside who can call for help (practice).");
    }

    /// <summary>Its class, A1, says nothing of any of this: practice. At 25 °C it stands at 64 bar absolute, its triple point lies at 5.2 bar absolute, its critical point at 31 °C (from memory).</summary>
    private static IEnumerable<Caution> OfCarbonDioxide(bool opensCircuit)
    {
        yield return new(Stage.MakeSafe, "R-744 suffocates without a smell, lies low, and is harmful in itself before the oxygen lacks: air closed rooms, pits and cold stores, and go in by a carbon dioxide meter (practice).");
        if (!opensCircuit) yield break;
        yield return new(Stage.MakeSafe, "R-744 stands at about 920 psi (63 bar) at 77 °F (25 °C) while nothing runs, and above 88 °F (31 °C) at whatever its charge makes: gauges, hoses and caps made for it, and none of it shut in between two valves (practice).");
        yield return new(Stage.Mount, "R-744 that gets out as liquid freezes to dry ice below 60 psi (4.2 bar), which plugs the pipe and bursts free later: where it may be let out at all, as gas, slowly and outdoors, and the pipe is opened only once it is warm (practice).");
    }
}
