using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.ExpansionValves.Aspects;

/// <summary>What is read of a valve's refrigerants.</summary>
/// <param name="IsListed">Whether it lists refrigerants at all.</param>
/// <param name="Listed">Their places among all refrigerants, rising.</param>
/// <param name="HasCopperJoints">Whether its joints are of copper: solder cups and flares; null where not given.</param>
public readonly record struct MadeForFacet(bool IsListed, Sequence<int> Listed, bool? HasCopperJoints);

/// <summary>Is the valve made for the refrigerant there?</summary>
/// <remarks>The same or not at all: its bulb's pressures belong to one refrigerant, or to a few that are much alike. Ammonia with joints for copper tube fails whatever it is made for. Where the refrigerant was not read, the old valve's list stands for it.</remarks>
public sealed class SameRefrigerant() : Aspect<ExpansionValveSpec, ExpansionValveSite, MadeForFacet>("Refrigerant", isDeciding: true, ExpansionValveSources.SameRefrigerant, new(0.3, 0.5, 2))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["refrigerants"], ["refrigerant"]) { Besides = ["joint"] };

    /// <inheritdoc/>
    public override MadeForFacet Read(ExpansionValveSpec part) => new(part.Refrigerants is not null, part.Refrigerants is null ? default : [.. part.Refrigerants.Select(RefrigerantList.PlaceOf)], Ammonia.HasCopper(part.Joint));

    /// <inheritdoc/>
    public override Finding Judge(ExpansionNeed need, MadeForFacet facet) => RefrigerantThere.Judge(
        need.Site.Refrigerant,
        need.Plate.Refrigerants,
        there => Ammonia.AtJoints(MadeFor(there, facet), there, facet.HasCopperJoints));

    private static Finding MadeFor(Refrigerant refrigerant, MadeForFacet facet)
    {
        if (!facet.IsListed) return Finding.Unknown(Side.Part, "refrigerants", $"The refrigerants that it is made for are not given.");
        return facet.Listed.AsSpan().Contains(RefrigerantList.PlaceOf(refrigerant))
            ? Finding.Meets($"It is made for {refrigerant.Name}.")
            : Finding.Fails($"It is not made for {refrigerant.Name}: its bulb would open and close at the wrong pressures.");
    }
}
