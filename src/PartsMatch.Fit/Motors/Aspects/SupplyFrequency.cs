using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the frequency aspect reads.</summary>
/// <param name="Hertz">The frequencies the motor is rated for, in Hz; empty when unknown.</param>
public readonly record struct FrequencyFacet(Sequence<double> Hertz)
{
    /// <summary>What they are for a motor.</summary>
    public static FrequencyFacet Of(MotorSpec part) => new(part.Frequency is null ? default : [.. part.Frequency.Select(frequency => Rounded.To(frequency.Hertz, 2))]);

    /// <summary>How far a supply's frequency lies off the nearest rated one, as a fraction; null when either is unknown.</summary>
    public double? Off(double? supplyHertz) => supplyHertz is { } hertz && Nearest(hertz) is { } rated ? SupplyWindows.FrequencyOff(rated, hertz) : null;

    /// <summary>The rated frequency nearest to a supply's; null when none is known.</summary>
    public double? Nearest(double supplyHertz)
    {
        double? nearest = null;
        foreach (var rated in Hertz.AsSpan())
        {
            if (nearest is not { } before || SupplyWindows.FrequencyOff(rated, supplyHertz) < SupplyWindows.FrequencyOff(before, supplyHertz)) nearest = rated;
        }

        return nearest;
    }

    /// <inheritdoc/>
    public override string ToString() => string.Join("/", Hertz.Select(hertz => FormattableString.Invariant($"{hertz:0.##}"))) + " Hz";
}

/// <summary>Is the motor rated for the supply's frequency?</summary>
/// <remarks>Within 5 % of a rated frequency, edges included (NEMA MG 1 12.44): 60 Hz alone fails on 50 Hz, and the reverse; 50/60 Hz takes both.</remarks>
public sealed class SupplyFrequency() : Aspect<MotorSpec, MotorSite, FrequencyFacet>("Frequency", isDeciding: true, MotorSources.Running, new(1, 0, 1.2))
{
    private const double Off = SupplyWindows.MostFrequencyOff;

    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a frequency", "off its own", 100 * SupplyWindows.EasyFrequencyOff, 100 * Off, "%");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["frequency"], ["supplyFrequency"]);

    /// <inheritdoc/>
    public override FrequencyFacet Read(MotorSpec part) => FrequencyFacet.Of(part);

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, FrequencyFacet facet)
    {
        if (facet.Hertz.Count == 0) return Finding.Unknown(Side.Part, "frequency", $"The part's frequency is not given.");
        if (need.Once(static need => Rounded.Hertz(need.Site.SupplyFrequency)) is not { } hertz || facet.Nearest(hertz) is not { } nearest)
        {
            return Takes(facet, 50) && Takes(facet, 60)
                ? Finding.Meets($"It is rated for {facet} and takes either mains frequency.")
                : Finding.Unknown(Side.Site, "supplyFrequency", $"It is rated for {facet}; the supply's frequency is not known.") with { Shortfall = Missed(need, facet) };
        }

        var off = SupplyWindows.FrequencyOff(nearest, hertz);
        Reason sentence = $"The supply is {hertz:0.##} Hz; rated for {facet}, it takes {nearest * (1 - Off):0.##} to {nearest * (1 + Off):0.##} Hz.";
        return (SupplyWindows.TakesFrequency(nearest, hertz) ? Finding.Meets(sentence) : Finding.Fails(sentence)) with
        {
            Shortfall = SupplyWindows.Shortfall(off, SupplyWindows.EasyFrequencyOff, Off),
            Margin = new(Math.Min(hertz - (nearest * (1 - Off)), (nearest * (1 + Off)) - hertz), "Hz"),
        };
    }

    private static bool Takes(FrequencyFacet facet, double hertz) => facet.Nearest(hertz) is { } nearest && SupplyWindows.TakesFrequency(nearest, hertz);

    /// <summary>The share of the old motor's frequencies that the part does not take.</summary>
    private static double Missed(MotorNeed need, FrequencyFacet facet)
    {
        var olds = need.OnceOfPlate(static plate => (double[])[.. plate.Frequency?.Select(one => one.Hertz) ?? []]);
        var missed = 0;
        foreach (var one in olds)
        {
            if (!Takes(facet, one)) missed++;
        }

        return olds.Length == 0 ? 0 : missed / (double)olds.Length;
    }
}
