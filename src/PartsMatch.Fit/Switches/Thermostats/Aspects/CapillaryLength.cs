using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>What the capillary reads of a thermostat.</summary>
/// <param name="Millimetres">Its length, mm; null when not known.</param>
/// <param name="IsDisc">Whether it is a disc, which has none.</param>
public readonly record struct CapillaryFacet(double? Millimetres, bool IsDisc);

/// <summary>Does the capillary reach from body to bulb?</summary>
/// <remarks>At least as long as is needed, the edge included. Where that is not known, one as long as the old one meets; a shorter one may still reach. Discs have none.</remarks>
public sealed class CapillaryLength() : Aspect<ThermostatSpec, ThermostatSite, CapillaryFacet>("Capillary", isDeciding: false, ThermostatSources.Capillary, new(0.3, 0.5, 0.4))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["capillary"], ["capillaryReach"]) { Besides = ["bulb"] };

    /// <inheritdoc/>
    public override CapillaryFacet Read(ThermostatSpec part) => new(Rounded.Millimetres(part.Capillary), FormOfBulb.IsDisc(part.Bulb));

    /// <inheritdoc/>
    public override Finding Judge(ThermostatNeed need, CapillaryFacet facet)
    {
        if (facet.IsDisc) return Finding.Meets($"It is a disc, which has no capillary.");
        var (reach, old) = (Rounded.Millimetres(need.Site.CapillaryReach), Rounded.Millimetres(need.Plate.Capillary));
        if (reach is { } far)
        {
            if (facet.Millimetres is not { } length) return Finding.Unknown(Side.Part, "capillary", $"It is {new Shown(far)} to the bulb; how long its capillary is, is not known.");
            return Within.AtLeast(length, far)
                ? Finding.Meets($"Its capillary is {new Shown(length)} long; it is {new Shown(far)} to the bulb.") with { Margin = new(length - far, "mm") }
                : Finding.Fails(new Margin(length - far, "mm"), $"Its capillary is {new Shown(length)} long; it is {new Shown(far)} to the bulb.");
        }

        return old is { } was && facet.Millimetres is { } now && Within.AtLeast(now, was)
            ? Finding.Meets($"Its capillary is {new Shown(now)} long, the old one's {new Shown(was)}.")
            : Finding.Unknown(Side.Site, "capillaryReach", $"How far it is from body to bulb is not known.");
    }
}
