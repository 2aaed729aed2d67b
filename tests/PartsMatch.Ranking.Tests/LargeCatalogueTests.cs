using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Tests;

/// <summary>Catalogues with more rows than a mark summarises, and with more distinct facets than a half-word counts.</summary>
public sealed class LargeCatalogueTests
{
    [Theory]
    [InlineData(3_000)] // more colours than stand among the few, fewer than a half-word counts
    [InlineData(70_000)]
    public void The_first_pages_of_a_large_catalogue_are_those_of_judging_every_part(int rows)
    {
        var family = Gaskets.Family();
        var random = new Random(20261125);
        var parts = Enumerable.Range(0, rows)
            .Select(index => Gaskets.Part($"G{index}", random.Next(14), random.Next(14), random.Next(14), colour: index, isMade: random.Next(3) > 0)).ToList();
        var stock = parts.Where(_ => random.Next(2) == 0).ToDictionary(part => part.Number, _ => new Stock(random.Next(3), random.Next(40)));
        var one = new Case(family, parts, stock, Weights.HandSet(family), Gaskets.Need());
        var catalogue = one.Catalogue.WithStock(stock);

        var expected = one.ByBruteForce(new HashSet<PartFit> { PartFit.DropIn, PartFit.FitsWithChanges, PartFit.CantTellYet }).Take(45).ToList();

        var first = Page(null);
        var second = Page(first.Parts[^1].Cursor);
        first.Parts.Concat(second.Parts).Select(part => part.Number).ShouldBe(expected);
        catalogue.Figures.Facets[3].ShouldBe(rows);

        // All of 14 x 14 x 14 prefixes are looked at at most, and of the colours only those of parts that might have won.
        first.FacetsJudged.ShouldBeLessThan(rows / 2);

        RankingPage.Listed Page(string? after) => Ranker.Rank(catalogue, one.Weights, new(one.Need, null, after is null ? 20 : 25, after)).ShouldBeOfType<RankingPage.Listed>();
    }

    [Fact]
    public void Nothing_is_judged_behind_a_prefix_that_cannot_win()
    {
        // Every bore meets; from four steps apart on a part cannot beat the twenty that are alike, so that no thickness behind those bores is judged.
        var (bore, thickness) = (new Bore(), new Thickness());
        var family = Gaskets.Family(bore, thickness);
        var alike = Enumerable.Range(0, 21).Select(index => Gaskets.Part($"A{index:00}"));
        var apart = Enumerable.Range(0, 300).Select(index => Gaskets.Part($"B{index:000}", bore: 9, thickness: 6 + (index % 4)));
        var catalogue = Catalogue.Of(family, alike.Concat(apart));

        var page = Ranker.Rank(catalogue, Weights.HandSet(family), new(Gaskets.Need(), null, 20, null)).ShouldBeOfType<RankingPage.Listed>();

        page.Parts.Select(part => part.Number).ShouldBe(Enumerable.Range(0, 20).Select(index => $"A{index:00}"));
        bore.Judged.Keys.Select(key => key.Facet.Number).ShouldBe([5, 9], ignoreOrder: true);
        thickness.Judged.Keys.Select(key => key.Facet.Number).ShouldBe([5]);
    }

    [Fact]
    public void A_catalogue_wants_sorting_once_more_than_1_percent_of_its_rows_came_or_went()
    {
        var family = Gaskets.Family();
        var catalogue = Catalogue.Of(family, Enumerable.Range(0, 30_000).Select(index => Gaskets.Part($"G{index}")));

        var some = catalogue.With(Enumerable.Range(0, 150).Select(index => Gaskets.Part($"G{index}", bore: 6)));
        some.WantsSorting.ShouldBeFalse();
        var more = some.With(Enumerable.Range(200, 10).Select(index => Gaskets.Part($"G{index}", isOffered: false)));
        more.WantsSorting.ShouldBeTrue();
        more.Sorted().WantsSorting.ShouldBeFalse();
        more.Sorted().Figures.Sorted.ShouldBe(29_990);
    }
}
