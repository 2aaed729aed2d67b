using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.CondensingPressureValves.Aspects;

/// <summary>What is read of a valve's capacity.</summary>
/// <param name="Watts">W; null where not given.</param>
/// <param name="With">The refrigerant's place among all; −1 where not given.</param>
/// <param name="Drop">Pressure drop of the rating, kPa; null where not given.</param>
/// <param name="Ambient">Least outdoor temperature of the rating, °C; null where not given.</param>
public readonly record struct HeadCapacityFacet(double? Watts, int With, double? Drop, double? Ambient);

/// <summary>Does the valve pass the load while it is cold outside?</summary>
/// <remarks>
/// Its rating is at least the load, edge included, and was given for no warmer a place: the colder it is, the less it passes. Given for a warmer one, or for none that is known, it is unknown.
/// Where less may be lost than the drop of its rating it passes less, by the root of the drop; more than its rating is never credited, for no maker says so. Where nobody said what may be lost, each is held at the drop of its own rating, and none fails by it.
/// A rating below the load fails where it is known that nothing kinder than its conditions is there: else it may pass the load yet, and its maker is asked. At a greater drop that is by the root of it, in a place that is or may be warmer at most twice as much (practice).
/// Rated with another refrigerant it is unknown. Where the load was not given, no less than the old one's at conditions no kinder meets.
/// </remarks>
public sealed class HeadCapacity() : Aspect<CondensingPressureValveSpec, CondensingPressureValveSite, HeadCapacityFacet>("Capacity", isDeciding: true, CondensingPressureValveSources.HeadCapacity, new(0.6, 0.5, 1.5))
{
    /// <summary>So many times the load count 1 (practice).</summary>
    private const double MuchTooLarge = 4;

    /// <summary>So many times its rating a valve is never taken to pass in a warmer place (practice).</summary>
    private const double WhereWarmer = 2;

    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a capacity", "of the load", 100, 100 * MuchTooLarge, "%") { IsByTimes = true };

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["ratedCapacity", "ratedDrop", "ratedAmbient"], ["load", "leastAmbient", "dropAllowed"]) { Besides = ["ratedWith", "refrigerant", "refrigerants"] };

    /// <inheritdoc/>
    public override HeadCapacityFacet Read(CondensingPressureValveSpec part) => Of(part);

    /// <inheritdoc/>
    public override Finding Judge(HeadNeed need, HeadCapacityFacet facet)
    {
        if (facet.Watts is not { } watts) return Finding.Unknown(Side.Part, "ratedCapacity", $"Its capacity is not given.");
        if (facet.With < 0 || facet.Drop is not > 0) return Finding.Unknown(Side.Part, facet.With < 0 ? "ratedWith" : "ratedDrop", $"Its capacity of {new ShownCapacity(watts)} is given without {(facet.With < 0 ? "its refrigerant" : "the drop of pressure that it is for")}.");
        if (need.Site.Load?.Watts is not { } load) return AgainstOld(need, facet, watts);
        if (need.Site.Refrigerant is not { } there) return Finding.Unknown(Side.Site, "refrigerant", $"Its capacity is {new ShownCapacity(watts)}; the refrigerant there is not known.");
        if (RefrigerantList.PlaceOf(there) != facet.With) return Finding.Unknown(Side.Part, "ratedWith", $"Its capacity is given for another refrigerant than {there.Name}.");
        var allowed = Rounded.Kilopascal(need.Site.DropAllowed);
        var passes = allowed < facet.Drop ? watts * Math.Sqrt(Math.Max(0, allowed.Value) / facet.Drop.Value) : watts;
        var sentence = new Words(facet, passes, allowed, load);
        var margin = new Margin((passes / load * 100) - 100, "%");
        var coldest = Rounded.Celsius(need.Site.LeastAmbient);
        var isShort = !Within.AtLeast(passes, load);
        if (isShort && !Within.AtLeast(AtMost(watts, facet, allowed, coldest), load))
        {
            return allowed is null ? Finding.Unknown(Side.Site, "dropAllowed", $"{sentence}; more passes at a greater drop, and how much may be lost in it is not known.") with { Shortfall = 1 } : Finding.Fails(margin, $"{sentence}.");
        }

        var shortfall = isShort ? 1 : 0;
        if (facet.Ambient is not { } rated) return Finding.Unknown(Side.Part, "ratedAmbient", $"{sentence}; how cold it may be outside for that is not given.") with { Shortfall = shortfall };
        if (coldest is not { } least) return Finding.Unknown(Side.Site, "leastAmbient", $"{sentence}. That is given down to {new ShownTemperature(rated)} outside; how cold it gets there is not known.") with { Shortfall = shortfall };
        if (isShort) return Finding.Unknown(Side.Part, "ratedCapacity", $"{sentence}. That is given down to {new ShownTemperature(rated)} outside; the least there is {new ShownTemperature(least)}. What it passes at the conditions there is not given.") with { Shortfall = 1 };
        return Within.AtMost(rated, least)
            ? Finding.Meets($"{sentence}. That is given down to {new ShownTemperature(rated)} outside; the least there is {new ShownTemperature(least)}.") with { Shortfall = TooLarge(passes, load), Margin = margin }
            : Finding.Unknown(Side.Part, "ratedAmbient", $"{sentence}. That is given down to {new ShownTemperature(rated)} outside; the least there is {new ShownTemperature(least)}, and it passes less then.") with { Shortfall = 1 };
    }

    /// <summary>What it passes there at most, W: by the root of a greater drop, and more where it is or may be warmer than its rating was given for.</summary>
    private static double AtMost(double watts, HeadCapacityFacet facet, double? allowed, double? coldest) =>
        watts * Math.Sqrt(Math.Max(0, allowed ?? facet.Drop!.Value) / facet.Drop!.Value) * (facet.Ambient is { } rated && coldest is { } least && Within.AtLeast(rated, least) ? 1 : WhereWarmer);

    private static Finding AgainstOld(HeadNeed need, HeadCapacityFacet facet, double watts)
    {
        if (facet.Ambient is null) return Finding.Unknown(Side.Part, "ratedAmbient", $"Its capacity of {new ShownCapacity(watts)} is given without how cold it may be outside for that.");
        var old = need.Once(static need => Of(need.Plate));
        return old.Watts is { } before && Within.AtLeast(watts, before) && old.With == facet.With && facet.Drop <= old.Drop && facet.Ambient <= old.Ambient
            ? Finding.Meets($"It passes {new ShownCapacity(watts)}, no less than the old one's {new ShownCapacity(before)}, at conditions that are no kinder.") with { Shortfall = TooLarge(watts, before) }
            : Finding.Unknown(Side.Site, "load", $"It passes {new ShownCapacity(watts)} at {new ShownPressure(facet.Drop!.Value)} drop; the load is not known.");
    }

    /// <summary>Of two valves that pass the load the one nearer to it holds the head more steadily.</summary>
    private static double TooLarge(double watts, double load) => Math.Clamp(Math.Log(watts / load, MuchTooLarge), 0, 1);

    private static HeadCapacityFacet Of(CondensingPressureValveSpec valve) => new(
        valve.RatedCapacity is { } capacity ? Rounded.To(capacity.Watts, 0) : null,
        valve.RatedWith is { } with ? RefrigerantList.PlaceOf(with) : -1,
        Rounded.Kilopascal(valve.RatedDrop),
        Rounded.Celsius(valve.RatedAmbient));

    /// <summary>What it passes, beside the load; formed only when it is shown.</summary>
    private readonly record struct Words(HeadCapacityFacet Rating, double Passes, double? Allowed, double Load)
    {
        public override string ToString() => FormattableString.Invariant(
            $"It passes {new ShownCapacity(Rating.Watts!.Value)} at {new ShownPressure(Rating.Drop!.Value)} drop{(Allowed < Rating.Drop ? FormattableString.Invariant($", and {new ShownCapacity(Passes)} at the {new ShownPressure(Allowed.Value)} that may be lost there") : string.Empty)}{(Allowed > Rating.Drop && Passes < Load ? FormattableString.Invariant($", and {new ShownPressure(Allowed.Value)} may be lost there") : string.Empty)}; the load is {new ShownCapacity(Load)}");
    }
}
