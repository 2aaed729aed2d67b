using PartsMatch.Ranking.Engine;

namespace PartsMatch.Ranking.Tests.Engine;

/// <summary>In which order rows are sorted by what is asked of them.</summary>
public sealed class SortingOrderTests
{
    [Theory]
    [InlineData(TurnedAway.LeastParts, new[] { 1, 0 })]
    [InlineData(TurnedAway.LeastParts - 1, new[] { 0, 1 })] // of so few nobody counts, and those with few facets stand first
    public void Of_a_large_catalogue_what_turns_most_away_for_its_branches_stands_first(int parts, int[] order)
    {
        // Of 14 bores one is as good as a plate's; thicknesses are 2, and nearly all alike.
        var family = Gaskets.Family(new Thickness(), new Bore());

        var catalogue = Catalogue.Of(family, Enumerable.Range(0, parts).Select(index => Gaskets.Part($"G{index}", bore: index % 14, thickness: index % 10 == 0 ? 6 : 5)));

        catalogue.Rows.Aspects.ShouldBe(order);
    }

    [Fact]
    public void What_is_known_of_a_catalogue_stays_while_little_is_added()
    {
        var family = Gaskets.Family(new Thickness(), new Bore());
        var catalogue = Catalogue.Of(family, Enumerable.Range(0, 3000).Select(index => Gaskets.Part($"G{index}", bore: index % 14, thickness: index % 10 == 0 ? 6 : 5)));

        // By these alone the thickness would stand first.
        var added = catalogue.With(Enumerable.Range(0, 1500).Select(index => Gaskets.Part($"N{index}", bore: 5, thickness: index % 14))).Sorted();

        added.Rows.Aspects.ShouldBe([1, 0]);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(7)]
    [InlineData(8)]
    [InlineData(15)]
    [InlineData(16)]
    [InlineData(1000)]
    public void A_sample_is_spread_evenly_over_all_there_were(int count)
    {
        var sample = new SpreadSample<int>(8);

        for (var next = 0; next < count; next++) sample.Add(next);

        sample.Seen.ShouldBe(count);
        sample.Kept.Count.ShouldBeInRange(Math.Min(count, 8), 15);
        var stride = sample.Kept.Count > 1 ? sample.Kept[1] : 1;
        sample.Kept.ShouldBe(Enumerable.Range(0, sample.Kept.Count).Select(at => at * stride));
        (sample.Kept.Count * stride).ShouldBeGreaterThanOrEqualTo(count);
    }
}
