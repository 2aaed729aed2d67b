using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Valves.ExpansionValves;

/// <summary>A published capacity with the conditions it was given for, in plain numbers.</summary>
/// <param name="Watts">Capacity, W.</param>
/// <param name="With">The refrigerant's place among all; −1 where not given.</param>
/// <param name="Evaporating">Dew temperature, °C.</param>
/// <param name="Liquid">Temperature of the liquid before the valve, °C.</param>
/// <param name="Drop">Pressure drop across the valve, kPa.</param>
public readonly record struct RatingFacet(double? Watts, int With, double? Evaporating, double? Liquid, double? Drop)
{
    /// <summary>The first of its fields that is missing; null when it is whole.</summary>
    internal string? Missing =>
        Watts is null ? "ratedCapacity" : With < 0 ? "ratedWith" : Evaporating is null ? "ratedEvaporatingAt" : Liquid is null ? "ratedLiquidAt" : Drop is not > 0 ? "ratedDrop" : null;

    internal static RatingFacet Of(ExpansionValveSpec part) => new(
        part.RatedCapacity is { } capacity ? Rounded.To(capacity.Watts, 0) : null,
        part.RatedWith is { } with ? RefrigerantList.PlaceOf(with) : -1,
        Rounded.Celsius(part.RatedEvaporatingAt),
        Rounded.Celsius(part.RatedLiquidAt),
        Rounded.Kilopascal(part.RatedDrop));
}

/// <summary>A head that a valve meets: what drives the refrigerant through it.</summary>
/// <param name="Drop">Condensing less evaporating pressure, less losses, kPa.</param>
/// <param name="Evaporating">Dew temperature, °C.</param>
/// <param name="Liquid">Temperature of the liquid before the valve, °C.</param>
/// <param name="Condensing">Bubble temperature, °C.</param>
internal readonly record struct Head(double Drop, double Evaporating, double Liquid, double Condensing);

/// <summary>Capacity of an expansion valve at a head, from its published rating.</summary>
/// <remarks>
/// Rating × √(Δp ÷ Δp rated) × Δh ÷ Δh rated × √(ρ ÷ ρ rated): the mass that an opening passes goes with the root of drop and density, the heat with what a kilogram takes up.
/// The liquid flow equation is never used: the liquid flashes in the valve.
/// </remarks>
internal static class ExpansionCapacity
{
    /// <summary>Capacity at a head, W; null where a temperature lies outside the refrigerant's tables, or nothing drives it.</summary>
    public static double? Watts(RatingFacet rating, Refrigerant refrigerant, Head head)
    {
        if (rating.Missing is not null || head.Drop <= 0) return null;
        var rated = Refrigerants.All[rating.With];
        return rating.Watts * Math.Sqrt(head.Drop / rating.Drop!.Value)
            * (RefrigerantFlow.Effect(refrigerant, head.Evaporating, head.Liquid) / RefrigerantFlow.Effect(rated, rating.Evaporating!.Value, rating.Liquid!.Value))
            * Root(refrigerant.LiquidDensity(head.Liquid) / rated.LiquidDensity(rating.Liquid.Value));
    }

    /// <summary>The least and the greatest head at a site; null with the field of the site that is missing.</summary>
    public static (IReadOnlyList<Head>? Heads, string Missing) HeadsAt(ExpansionNeed need) => need.Once(static need => Work(need.Site));

    private static (IReadOnlyList<Head>? Heads, string Missing) Work(ExpansionValveSite site)
    {
        if (site.Refrigerant is not { HasStates: true, HasCurve: true } refrigerant) return (null, "refrigerant");
        if (Rounded.Celsius(site.EvaporatingAt) is not { } evaporating) return (null, "evaporatingAt");
        if (site.HasDistributor is null && site.DistributorLoss is null) return (null, "hasDistributor");
        if (Rounded.Kilopascal(site.DistributorLoss) is not { } distributor) return (null, "distributorLoss");
        if (Rounded.Kilopascal(site.LineLoss) is not { } line) return (null, "lineLoss");
        if (site.Subcooling is not { } subcooling) return (null, "subcooling");
        List<Head> heads = [];
        foreach (var (condensing, field) in new[] { (Rounded.Celsius(site.CondensingLeast), "condensingLeast"), (Rounded.Celsius(site.CondensingMost), "condensingMost") })
        {
            if (condensing is not { } celsius) return (null, field);
            if (refrigerant.BubblePressure(Temperature.FromDegreesCelsius(celsius)) is not { } high || refrigerant.DewPressure(Temperature.FromDegreesCelsius(evaporating)) is not { } low) return (null, field);
            heads.Add(new(high.Kilopascals - low.Kilopascals - distributor - line, evaporating, celsius - subcooling.Kelvins, celsius));
        }

        return (heads, string.Empty);
    }

    private static double? Root(double? value) => value is { } known ? Math.Sqrt(known) : null;
}
