using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.PressureControls.Aspects;

/// <summary>What the materials read of a pressure control.</summary>
/// <param name="Wetted">What the refrigerant touches.</param>
public readonly record struct MaterialsFacet(ChoiceSet<WettedMaterial> Wetted)
{
    /// <summary>Whether ammonia would eat it.</summary>
    internal bool HasCopper => Wetted.Has(WettedMaterial.Copper) || Wetted.Has(WettedMaterial.Brass);
}

/// <summary>Does the refrigerant leave what it touches alone?</summary>
/// <remarks>Ammonia with copper or brass fails, and unlisted materials beside it are unknown. Where the refrigerant is not named, an old one without copper asks for the same again.</remarks>
public sealed class Materials() : Aspect<PressureControlSpec, PressureControlSite, MaterialsFacet>("Materials", isDeciding: true, PressureControlSources.Materials, new(0.3, 0.5, 0.8))
{
    private const string Ammonia = "R-717";

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["materials"], ["refrigerant"]);

    /// <inheritdoc/>
    public override MaterialsFacet Read(PressureControlSpec part) => new(ChoiceSet<WettedMaterial>.Of(part.Materials));

    /// <inheritdoc/>
    public override Finding Judge(PressureControlNeed need, MaterialsFacet facet)
    {
        if (need.Site.Refrigerant is { } refrigerant)
        {
            if (refrigerant.Name != Ammonia) return Finding.Meets($"{refrigerant.Name} leaves copper, brass and steel alone.");
            if (facet.Wetted.IsUnknown) return Finding.Unknown(Side.Part, "materials", $"Ammonia eats copper and brass; what it would touch is not known.");
            return facet.HasCopper ? Finding.Fails($"Ammonia eats copper and brass; it would touch {facet.Wetted}.") : Finding.Meets($"Ammonia leaves {facet.Wetted} alone.");
        }

        var old = Read(need.Plate);
        return !old.Wetted.IsUnknown && !old.HasCopper && (facet.Wetted.IsUnknown || facet.HasCopper)
            ? Finding.Unknown(Side.Site, "refrigerant", $"The old one had neither copper nor brass inside; whether there is ammonia is not known.")
            : Finding.Meets($"No ammonia is named, and the old one does not hint at it without this one being made for it, too.");
    }
}
