using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Capacitors.Aspects;

/// <summary>What the temperature reads of a capacitor.</summary>
/// <param name="Most">The highest case temperature, °C; null when not known.</param>
public readonly record struct TemperatureFacet(double? Most);

/// <summary>Does the capacitor bear the heat of its box?</summary>
/// <remarks>70 °C at least, and at least the hottest air round it (practice).</remarks>
public sealed class TemperatureRating() : Aspect<CapacitorSpec, CapacitorSite, TemperatureFacet>("Capacitor temperature", isDeciding: false, CapacitorSources.CapacitorTemperature, new(0.4, 0.5, 0.7))
{
    private const double Least = 70;

    /// <summary>With this much to spare nobody gives it a thought, K (practice).</summary>
    private const double Ample = 10;

    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("air", "below what it is made for", Ample, 0, "K");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["temperatureMost"], ["airMost"]);

    /// <inheritdoc/>
    public override TemperatureFacet Read(CapacitorSpec part) => new(Rounded.Celsius(part.TemperatureMost));

    /// <inheritdoc/>
    public override Finding Judge(CapacitorNeed need, TemperatureFacet facet)
    {
        var air = Rounded.Celsius(need.Site.AirMost);
        var least = Math.Max(Least, air ?? Least);
        if (facet.Most is not { } most) return Finding.Unknown(Side.Part, "temperatureMost", $"{least} °C at least is needed; the capacitor's highest temperature is not known.");
        var margin = new Margin(most - least, "K");
        return Within.AtLeast(most, least)
            ? Finding.Meets($"It is made for up to {most} °C; {least} °C at least is needed.") with { Margin = margin, Shortfall = air is { } hottest ? Math.Clamp(1 - ((most - hottest) / Ample), 0, 1) : 0 }
            : Finding.Fails($"It is made for up to {most} °C; {least} °C at least is needed.") with { Margin = margin };
    }
}
