using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.CondensingPressureValves.Aspects;

/// <summary>What is read of a valve's refrigerants.</summary>
/// <param name="IsListed">Whether it lists refrigerants at all.</param>
/// <param name="Listed">Their places among all refrigerants, rising.</param>
/// <param name="HasCopperJoints">Whether its joints are of copper: solder cups and flares; null where not given.</param>
public readonly record struct HeadRefrigerantFacet(bool IsListed, Sequence<int> Listed, bool? HasCopperJoints);

/// <summary>Is the valve listed for the refrigerant there?</summary>
/// <remarks>Listed meets; not listed is unknown, for only its maker can say whether it bears it; one that burns more readily than all that are listed fails. Ammonia with joints for copper tube fails whatever is listed. Where the refrigerant was not read, the old valve's list stands for it.</remarks>
public sealed class HeadRefrigerant() : Aspect<CondensingPressureValveSpec, CondensingPressureValveSite, HeadRefrigerantFacet>("Refrigerant", isDeciding: true, ValveSources.Refrigerant, new(0.5, 0.5, 2))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["refrigerants"], ["refrigerant"]) { Besides = ["joint"] };

    /// <inheritdoc/>
    public override HeadRefrigerantFacet Read(CondensingPressureValveSpec part) => new(part.Refrigerants is not null, part.Refrigerants is null ? default : [.. part.Refrigerants.Select(RefrigerantList.PlaceOf)], Ammonia.HasCopper(part.Joint));

    /// <inheritdoc/>
    public override Finding Judge(HeadNeed need, HeadRefrigerantFacet facet) => RefrigerantThere.Judge(
        need.Site.Refrigerant,
        need.Plate.Refrigerants,
        there => Ammonia.AtJoints(ListedRefrigerants.Judge(facet.IsListed, facet.Listed, there), there, facet.HasCopperJoints));
}
