using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.ExpansionValves.Aspects;

/// <summary>What is read of a valve's capillary.</summary>
/// <param name="Length">mm; null where not given.</param>
public readonly record struct CapillaryFacet(double? Length);

/// <summary>Does the capillary reach the bulb's place?</summary>
/// <remarks>At least the length needed, edge included; a longer one is coiled up. Where that was not measured, one no shorter than the old one's meets.</remarks>
public sealed class CapillaryReach() : Aspect<ExpansionValveSpec, ExpansionValveSite, CapillaryFacet>("Capillary", isDeciding: false, ExpansionValveSources.Capillary, new(0.2, 0.3, 0.3))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["capillary"], ["capillaryNeeded"]);

    /// <inheritdoc/>
    public override CapillaryFacet Read(ExpansionValveSpec part) => new(Rounded.Millimetres(part.Capillary));

    /// <inheritdoc/>
    public override Finding Judge(ExpansionNeed need, CapillaryFacet facet) => (Rounded.Millimetres(need.Site.CapillaryNeeded), facet.Length) switch
    {
        (_, null) => Finding.Unknown(Side.Part, "capillary", $"The length of its capillary is not given."),
        (null, { } has) when Rounded.Millimetres(need.Plate.Capillary) is { } old && Within.AtLeast(has, old) => Finding.Meets($"Its capillary is {new Shown(has)} long, no shorter than the old one's {new Shown(old)}."),
        (null, { } has) => Finding.Unknown(Side.Site, "capillaryNeeded", $"Its capillary is {new Shown(has)} long; what is needed there was not measured."),
        ({ } needed, { } has) when Within.AtLeast(has, needed) => Finding.Meets($"Its capillary is {new Shown(has)} long; {new Shown(needed)} reach the bulb's place.") with { Margin = new(has - needed, "mm") },
        ({ } needed, { } has) => Finding.Fails(new(has - needed, "mm"), $"Its capillary is {new Shown(has)} long; {new Shown(needed)} are needed to reach the bulb's place."),
    };
}
