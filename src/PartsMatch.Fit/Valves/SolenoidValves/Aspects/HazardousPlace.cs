using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Ignition;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Valves.SolenoidValves.Aspects;

/// <summary>What is read of a valve as a source of ignition.</summary>
/// <param name="Marks">Its marks, which are those of valve and coil as they come.</param>
/// <param name="Coils">Its coils, without their numbers.</param>
public readonly record struct CoiledIgnitionFacet(IgnitionFacet Marks, CoilFacet Coils);

/// <summary>Is the valve with its coil no source of ignition where something could burn?</summary>
/// <remarks>
/// It has no contacts, and goes by its marks: one for the place meets, for ordinary places alone fails, and where none is given its listing is to be checked beside an A2L or A3 refrigerant.
/// The mark is that of the valve with the coil that comes on it: where another one goes in, that one's own is to be seen.
/// </remarks>
public sealed class HazardousPlace() : Aspect<SolenoidValveSpec, SolenoidValveSite, CoiledIgnitionFacet>("Hazard", isDeciding: true, IgnitionSources.Hazard, new(0.3, 0.2, 1))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["hazards"], ["hazard", "refrigerant"])
    {
        Besides = ["furtherCoils", "coilVolts", "coilFrequency", "coilCurrent", "coilSupplyVolts", "coilSupplyFrequency", "coilSupplyCurrent"],
    };

    /// <inheritdoc/>
    public override CoiledIgnitionFacet Read(SolenoidValveSpec part) => new(Marks(part), CoilFacet.Unnumbered(part.CoilVolts, part.CoilCurrent, part.CoilFrequency, part.FurtherCoils));

    /// <inheritdoc/>
    public override Finding Judge(SolenoidNeed need, CoiledIgnitionFacet facet)
    {
        var found = IgnitionRule.Judge(Marks(need.Plate), facet.Marks, need.Site.Hazard, need.Site.Refrigerant);
        if (found.Verdict != Verdict.Meets || BurningRefrigerant.Strictest(need.Site.Hazard, need.Site.Refrigerant) is null or Hazard.None) return found;
        var coil = CoilGoingIn.Possible(facet.Coils, SolenoidCoils.Supply(need), SolenoidCoils.Window)[0];
        return coil.IsOwn ? found : found.With([new(IgnitionChanges.CheckListing, $"see that the coil for {coil.Coil[0]} that goes in is marked for the place, too: the valve's mark is that of the coil that comes on it")]);
    }

    private static IgnitionFacet Marks(SolenoidValveSpec valve) => IgnitionFacet.Of(ContactEnclosure.SolidState, valve.Hazards);
}
