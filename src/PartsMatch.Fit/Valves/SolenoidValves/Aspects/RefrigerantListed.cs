using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Valves.Pipes;

namespace PartsMatch.Fit.Valves.SolenoidValves.Aspects;

/// <summary>What is read of a valve's refrigerants and materials.</summary>
/// <param name="IsListed">Whether it lists refrigerants at all.</param>
/// <param name="Listed">Their places among all refrigerants, rising.</param>
/// <param name="Body">Body material; null where not given.</param>
/// <param name="HasCopperJoints">Whether its joints are of copper: solder cups and flares; null where not given.</param>
public readonly record struct ListedFacet(bool IsListed, Sequence<int> Listed, BodyMaterial? Body, bool? HasCopperJoints);

/// <summary>Is the valve listed for the refrigerant, and do its materials bear it?</summary>
/// <remarks>Listed meets, not listed is unknown, for a maker may allow what a list does not name; one that burns more readily than all that are listed fails. Ammonia with brass or copper fails whatever is listed. Where the refrigerant was not read, the old valve's list stands for it.</remarks>
public sealed class RefrigerantListed() : Aspect<SolenoidValveSpec, SolenoidValveSite, ListedFacet>("Refrigerant", isDeciding: true, ValveSources.Refrigerant, new(0.5, 0.5, 2))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["refrigerants", "body"], ["refrigerant"]) { Besides = ["joint"] };

    /// <inheritdoc/>
    public override ListedFacet Read(SolenoidValveSpec part) => new(
        part.Refrigerants is not null,
        part.Refrigerants is null ? default : [.. part.Refrigerants.Select(RefrigerantList.PlaceOf)],
        part.Body,
        Ammonia.HasCopper(part.Joint));

    /// <inheritdoc/>
    public override Finding Judge(SolenoidNeed need, ListedFacet facet) => RefrigerantThere.Judge(need.Site.Refrigerant, need.Plate.Refrigerants, there =>
    {
        var listed = ListedRefrigerants.Judge(facet.IsListed, facet.Listed, there);
        return Ammonia.AtJoints(Ammonia.Is(there) ? AtBody(listed, facet.Body) : listed, there, facet.HasCopperJoints);
    });

    private static Finding AtBody(Finding listed, BodyMaterial? body) => body switch
    {
        BodyMaterial.Brass => Finding.Fails($"R-717 (ammonia) attacks brass, and its body is of brass."),
        null => Finding.Unknown(Side.Part, "body", $"R-717 (ammonia) attacks brass; what its body is made of is not given.").OrWorse(listed),
        _ => listed,
    };
}
