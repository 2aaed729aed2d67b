using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the insulation reads of a motor.</summary>
/// <param name="Class">Its class; null when not known.</param>
/// <param name="IsAmbientMarked">Whether its maker says how hot its air may be.</param>
public readonly record struct InsulationFacet(InsulationClass? Class, bool IsAmbientMarked);

/// <summary>Does the winding bear as much heat as the old one's?</summary>
/// <remarks>
/// A class is only half of it: how far the winding heats up is the maker's matter. Where he marks the ambient, and the air is known or the old plate tells it, those two decide (see the ambient);
/// else a lower class than the old one's is a check.
/// </remarks>
public sealed class Insulation() : Aspect<MotorSpec, MotorSite, InsulationFacet>("Insulation", isDeciding: false, PlaceSources.Insulation, new(0.3, 0.6, 0.3))
{
    /// <summary>From class H to A, K: a shortfall of 1.</summary>
    private const double WholeSpan = 75;

    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a class", "under the old motor's", 0, WholeSpan, "K");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["insulation", "ambientMost"], []) { Besides = ["airMost"] };

    /// <inheritdoc/>
    public override InsulationFacet Read(MotorSpec part) => new(part.Insulation, part.AmbientMost is not null);

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, InsulationFacet facet)
    {
        if (need.Plate.Insulation is not { } old) return Finding.Meets($"The old motor's insulation class is not known, so none is asked for.");
        var needed = Limit(old);
        if (facet.Class is { } known && Limit(known) is var limit && Within.AtLeast(limit, needed))
        {
            return Finding.Meets($"Class {known} bears {limit:0} °C; the old motor's {old} bears {needed:0} °C.") with { Margin = new(limit - needed, "K") };
        }

        if (facet.IsAmbientMarked && Ambient.HottestAir(need) is not null)
        {
            var shortfall = facet.Class is { } marked ? (needed - Limit(marked)) / WholeSpan : 0;
            return Finding.Meets($"Its maker marks how hot its air may be, which tells more than a class; the old motor's was {old}.") with { Shortfall = shortfall };
        }

        if (facet.Class is not { } lower) return Finding.Unknown(Side.Part, "insulation", $"The old motor's class {old} bears {needed:0} °C; this one's class is not known.");
        return Finding.MeetsWith([new(PlaceChanges.CheckInsulation, $"see that the place is not hot: class {lower} bears {Limit(lower):0} °C, the old motor's {old} {needed:0} °C")], $"Class {lower} bears {Limit(lower):0} °C, the old motor's {old} {needed:0} °C; {(facet.IsAmbientMarked ? "how hot the air there gets is not given" : "its highest ambient is not marked")}.") with
        {
            Shortfall = (needed - Limit(lower)) / WholeSpan,
            Margin = new(Limit(lower) - needed, "K"),
        };
    }

    private static double Limit(InsulationClass insulation) => InsulationClasses.LimitCelsius(insulation);
}
