using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>What heat at the bulb reads of a thermostat.</summary>
/// <param name="Most">Highest temperature that its bulb bears, °C; null when not known.</param>
public readonly record struct BulbMostFacet(double? Most);

/// <summary>Does the bulb bear the heat of a defrost?</summary>
/// <remarks>At least the defrost's peak, the edge included. Where that is not known, one that bears as much as the old one meets.</remarks>
public sealed class PeakAtBulb() : Aspect<ThermostatSpec, ThermostatSite, BulbMostFacet>("Heat at the bulb", isDeciding: false, ThermostatSources.PeakAtBulb, new(0.3, 0.5, 0.4))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["bulbMost"], ["defrostPeak"]);

    /// <inheritdoc/>
    public override BulbMostFacet Read(ThermostatSpec part) => new(Degrees.In(part.BulbMost));

    /// <inheritdoc/>
    public override Finding Judge(ThermostatNeed need, BulbMostFacet facet)
    {
        var (peak, old) = (Degrees.In(need.Site.DefrostPeak), Degrees.In(need.Plate.BulbMost));
        if (peak is { } hottest)
        {
            if (facet.Most is not { } bears) return Finding.Unknown(Side.Part, "bulbMost", $"Its place comes to {new ShownTemperature(hottest)}; what its bulb bears is not known.");
            var margin = new Margin(Rounded.To(bears - hottest, 2), "K");
            return Within.AtLeast(bears, hottest)
                ? Finding.Meets($"Its bulb bears {new ShownTemperature(bears)}; its place comes to {new ShownTemperature(hottest)} in a defrost.") with { Margin = margin }
                : Finding.Fails(margin, $"Its bulb bears {new ShownTemperature(bears)}; its place comes to {new ShownTemperature(hottest)} in a defrost.");
        }

        return old is { } bore && facet.Most is { } most && Within.AtLeast(most, bore)
            ? Finding.Meets($"Its bulb bears {new ShownTemperature(most)}, the old one's {new ShownTemperature(bore)}.")
            : Finding.Unknown(Side.Site, "defrostPeak", $"How warm its place gets in a defrost is not known.");
    }
}
