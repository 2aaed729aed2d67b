using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Motors;

/// <summary>What to mind on an electrical job where something could burn: the same for every family.</summary>
internal static class HazardCautions
{
    /// <summary>The cautions of a hazard; none where nothing burns, or nobody said so.</summary>
    /// <param name="hazard">The hazard.</param>
    /// <param name="opensCircuit">Whether the job opens the refrigerant circuit.</param>
    public static IEnumerable<Caution> Of(Hazard? hazard, bool opensCircuit = false) => hazard switch
    {
        Hazard.A2L or Hazard.A3 =>
        [
            new(Stage.MakeSafe, $"Flammable refrigerant is there: air the place, and prove with a detector that none has leaked before anything is switched, metered or filed. No flame.{(opensCircuit ? string.Empty : " The refrigerant circuit stays closed: this job does not open it.")}"),
        ],
        Hazard.ClassOneDivisionOne or Hazard.ClassOneDivisionTwo => [new(Stage.MakeSafe, "The area is classified: nothing is opened, metered live or filed there before whoever is responsible for it has cleared it.")],
        _ => [],
    };
}
