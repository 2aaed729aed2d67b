using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.SolenoidValves.Aspects;

/// <summary>What is read of a valve's opening differential.</summary>
/// <param name="Most">The largest difference that it opens against, kPa; null where not given.</param>
public readonly record struct OpeningFacet(double? Most);

/// <summary>Does the valve open against the largest difference that the system sees?</summary>
/// <remarks>Highest inlet less lowest outlet pressure; where these were not read, one that opens against no less than the old one did meets.</remarks>
public sealed class OpensAgainst() : Aspect<SolenoidValveSpec, SolenoidValveSite, OpeningFacet>("Opening differential", isDeciding: true, SolenoidValveSources.OpeningDifferential, new(0.8, 0.5, 1.5))
{
    /// <summary>Up to this share of what it opens against nobody would give it a thought (practice).</summary>
    private const double Easy = 0.8;

    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a pressure difference", "of the most that it opens against", 100 * Easy, 100, "%");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["openingDifferential"], ["inletMost", "outletLeast"]);

    /// <inheritdoc/>
    public override OpeningFacet Read(SolenoidValveSpec part) => new(Rounded.Kilopascal(part.OpeningDifferential));

    /// <inheritdoc/>
    public override Finding Judge(SolenoidNeed need, OpeningFacet facet)
    {
        if (facet.Most is not { } most) return Finding.Unknown(Side.Part, "openingDifferential", $"The largest differential that it opens against is not given.");
        if (Rounded.Kilopascal(need.Site.InletMost) is { } inlet && Rounded.Kilopascal(need.Site.OutletLeast) is { } outlet)
        {
            var needed = inlet - outlet;
            FormattableString sentence = $"From {new ShownPressure(inlet)} before it to {new ShownPressure(outlet)} behind it are {new ShownPressure(needed)}; it opens against {new ShownPressure(most)} at most.";
            var margin = new Margin(Math.Abs(most - needed) <= Rounded.OffBy(3) ? 0 : most - needed, "kPa");
            return (margin.Value >= 0 ? Finding.Meets(sentence) : Finding.Fails(sentence)) with { Shortfall = Math.Max(0, ((needed / Math.Max(most, 1)) - Easy) / (1 - Easy)), Margin = margin };
        }

        var missing = need.Site.InletMost is null ? "inletMost" : "outletLeast";
        if (Rounded.Kilopascal(need.Plate.OpeningDifferential) is not { } old) return Finding.Unknown(Side.Site, missing, $"It opens against {new ShownPressure(most)}; the pressures before and behind it are not known.");
        return Within.AtLeast(most, old)
            ? Finding.Meets($"It opens against {new ShownPressure(most)}, no less than the old one's {new ShownPressure(old)}.")
            : Finding.Unknown(Side.Site, missing, $"It opens against {new ShownPressure(most)}, less than the old one's {new ShownPressure(old)}; the pressures before and behind it are not known.") with { Shortfall = 1 };
    }
}
