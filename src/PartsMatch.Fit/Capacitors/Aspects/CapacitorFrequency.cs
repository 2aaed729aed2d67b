using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Capacitors.Aspects;

/// <summary>What the frequency reads of a capacitor.</summary>
/// <param name="Most">The highest frequency it is marked for, Hz; null when not known.</param>
public readonly record struct FrequencyFacet(double? Most);

/// <summary>Is the capacitor made for a frequency as high as the supply's?</summary>
/// <remarks>Its current rises with frequency (I = 2πfCV): up to 1 % over its highest marked frequency meets, as supplies wander (practice); higher fails, lower is easier on it.</remarks>
public sealed class CapacitorFrequency() : Aspect<CapacitorSpec, CapacitorSite, FrequencyFacet>("Capacitor frequency", isDeciding: false, CapacitorSources.CapacitorFrequency, new(0.3, 0.5, 0.7))
{
    private const double Wander = 1.01;

    /// <summary>Public supplies have 50 or 60 Hz (IEC 60196): what is made for the higher needs no measuring.</summary>
    private const double HighestSupply = 60;

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["frequency"], ["supplyFrequency"]);

    /// <inheritdoc/>
    public override FrequencyFacet Read(CapacitorSpec part) => new(part.Frequency?.Max(one => Rounded.Hertz(one)));

    /// <inheritdoc/>
    public override Finding Judge(CapacitorNeed need, FrequencyFacet facet)
    {
        var supply = Rounded.Hertz(need.Site.SupplyFrequency);
        return (supply, facet.Most) switch
        {
            (null, >= HighestSupply) => Finding.Meets($"It is made for up to {facet.Most} Hz, which any public supply has at most."),
            ({ } hertz, { } most) when Within.AtMost(hertz, most * Wander) => Finding.Meets($"It is made for up to {most} Hz; the supply has {hertz} Hz."),
            ({ } hertz, { } most) => Finding.Fails($"It is made for up to {most} Hz; at the supply's {hertz} Hz it would carry more current than that, and 1 % over is the limit."),
            (null, { }) => Finding.Unknown(Side.Site, "supplyFrequency", $"It is made for up to {facet.Most} Hz; the supply's frequency is not known."),
            (_, null) => Finding.Unknown(Side.Part, "frequency", $"The frequency that it is made for is not known."),
        };
    }
}
