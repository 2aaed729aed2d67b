using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.CondensingPressureValves.Aspects;

/// <summary>What is read of a valve's capacity.</summary>
/// <param name="Watts">W; null where not given.</param>
/// <param name="With">The refrigerant's place among all; −1 where not given.</param>
/// <param name="Drop">Pressure drop of the rating, kPa; null where not given.</param>
public readonly record struct HeadCapacityFacet(double? Watts, int With, double? Drop);

/// <summary>Does the valve pass the load while it is cold outside?</summary>
/// <remarks>Its capacity at its own conditions is at least the load, edge included. Rated with another refrigerant it is unknown. Where the load was not given, no less than the old one's at the same conditions meets.</remarks>
public sealed class HeadCapacity() : Aspect<CondensingPressureValveSpec, CondensingPressureValveSite, HeadCapacityFacet>("Capacity", isDeciding: true, CondensingPressureValveSources.HeadCapacity, new(0.6, 0.5, 1.5))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["ratedCapacity", "ratedDrop"], ["load"]) { Besides = ["ratedWith", "refrigerant", "refrigerants"] };

    /// <inheritdoc/>
    public override HeadCapacityFacet Read(CondensingPressureValveSpec part) => Of(part);

    /// <inheritdoc/>
    public override Finding Judge(HeadNeed need, HeadCapacityFacet facet)
    {
        if (facet.Watts is not { } watts) return Finding.Unknown(Side.Part, "ratedCapacity", $"Its capacity is not given.");
        if (facet.With < 0 || facet.Drop is null) return Finding.Unknown(Side.Part, facet.With < 0 ? "ratedWith" : "ratedDrop", $"Its capacity of {watts / 1000:0.#} kW is given without its conditions.");
        if (need.Site.Load?.Watts is { } load)
        {
            if (need.Site.Refrigerant is not { } there) return Finding.Unknown(Side.Site, "refrigerant", $"Its capacity is {watts / 1000:0.#} kW; the refrigerant there is not known.");
            if (RefrigerantList.PlaceOf(there) != facet.With) return Finding.Unknown(Side.Part, "ratedWith", $"Its capacity is given for another refrigerant than {there.Name}.");
            FormattableString sentence = $"It passes {watts / 1000:0.#} kW at {new ShownPressure(facet.Drop.Value)} drop; the load is {load / 1000:0.#} kW.";
            return (Within.AtLeast(watts, load) ? Finding.Meets(sentence) with { Shortfall = TooLarge(watts, load) } : Finding.Fails(sentence)) with { Margin = new((watts / load * 100) - 100, "%") };
        }

        var old = need.Once(static need => Of(need.Plate));
        return old.Watts is { } before && old.With == facet.With && old.Drop == facet.Drop && Within.AtLeast(watts, before)
            ? Finding.Meets($"It passes {watts / 1000:0.#} kW, no less than the old one's {before / 1000:0.#} kW at the same conditions.") with { Shortfall = TooLarge(watts, before) }
            : Finding.Unknown(Side.Site, "load", $"It passes {watts / 1000:0.#} kW at {new ShownPressure(facet.Drop.Value)} drop; the load is not known.");
    }

    /// <summary>Of two valves that pass the load the one nearer to it holds the head more steadily; four times the load counts 1 (practice).</summary>
    private static double TooLarge(double watts, double load) => Math.Clamp(Math.Log2(watts / load) / 2, 0, 1);

    private static HeadCapacityFacet Of(CondensingPressureValveSpec valve) =>
        new(valve.RatedCapacity is { } capacity ? Rounded.To(capacity.Watts, 0) : null, valve.RatedWith is { } with ? RefrigerantList.PlaceOf(with) : -1, Rounded.Kilopascal(valve.RatedDrop));
}
