using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.ExpansionValves;

/// <summary>What will be different once a new expansion valve is in: its capacity over the load at either head.</summary>
internal static class ExpansionValveDifferences
{
    private const string Assumption = "the load, heads, subcooling and losses that were given; the published rating scaled by drop, refrigerating effect and density";

    /// <summary>Capacity over the load at the least and the greatest head, old against new; none where either is not known.</summary>
    public static IReadOnlyList<Difference> Of(ExpansionNeed need, ExpansionValveSpec part)
    {
        if (Shares(need, part) is not { } now) return [];
        var old = Shares(need, need.Plate);
        return
        [
            new("capacityAtLeastHead", "Capacity of the load at the coldest condensing", "%", old is { } first ? Band.Exactly(first.AtLeast) : null, Band.Exactly(now.AtLeast), null, [Assumption]),
            new("capacityAtGreatestHead", "Capacity of the load at the warmest condensing", "%", old is { } second ? Band.Exactly(second.AtMost) : null, Band.Exactly(now.AtMost), null, [Assumption]),
        ];
    }

    /// <summary>The same between its limits; none where it is not known.</summary>
    public static IReadOnlyList<Drawing> Drawings(ExpansionNeed need, ExpansionValveSpec part)
    {
        if (Shares(need, part) is not { } now) return [];
        var shown = Band.Around(now.AtLeast, now.AtMost);
        var range = new Band(Math.Min(50, 0.9 * shown.Low), Math.Max(200, 1.1 * shown.High));
        return
        [
            new Scale(
                "capacityOverLoad",
                "Capacity over the load",
                FormattableString.Invariant($"It passes {now.AtLeast:0} % of the load at the coldest condensing and {now.AtMost:0} % at the warmest; 100 to 130 % are right, 90 to 150 % are to be checked."),
                "%",
                range,
                [new("too small", Role.Bad, new(range.Low, 90)), new("check", Role.Open, new(90, 100)), new("right", Role.Good, new(100, 130)), new("check", Role.Open, new(130, 150)), new("too large", Role.Bad, new(150, range.High))],
                [new("this valve, from one head to the other", Role.New, shown)]),
        ];
    }

    private static (double AtLeast, double AtMost)? Shares(ExpansionNeed need, ExpansionValveSpec valve)
    {
        var rating = RatingFacet.Of(valve);
        if (rating.Missing is not null || need.Site.Load?.Watts is not { } load || ExpansionCapacity.HeadsAt(need).Heads is not { } heads) return null;
        return ExpansionCapacity.Watts(rating, need.Site.Refrigerant!, heads[0]) is { } least && ExpansionCapacity.Watts(rating, need.Site.Refrigerant!, heads[1]) is { } most ? (least / load * 100, most / load * 100) : null;
    }
}
