using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Tests;

/// <summary>Of many parts that may win only those are judged that have to be, and the list is that of judging all of them.</summary>
public sealed class LikeliestFirstTests
{
    private const int Many = 2_000;

    [Fact]
    public void Of_parts_that_fit_alike_hardly_more_are_judged_to_the_end_than_are_shown()
    {
        // All colours cost nothing, and each is another: only those of the best offers are looked at.
        var family = Gaskets.Family(new Bore(), new Paint());
        var catalogue = Catalogue.Of(family, Enumerable.Range(0, Many).Select(index => Gaskets.Part(Number(index), colour: index)))
            .WithStock(Enumerable.Range(0, Many).Select(index => KeyValuePair.Create(Number(index), new Stock(1, Many - index))));

        var page = Page(catalogue, first: 20);

        page.Parts.Select(part => part.Number).ShouldBe(Enumerable.Range(0, 20).Select(index => Number(Many - 1 - index)));
        page.FacetsJudged.ShouldBe(1 + 21, "one bore, and a colour for every part shown and for the one that tells whether more follow");
    }

    [Fact]
    public void What_can_only_show_less_is_not_looked_at_once_enough_was_found()
    {
        // One in ten is alike; the others are four steps of bore off, in front of them and behind them.
        var family = Gaskets.Family();
        var catalogue = Catalogue.Of(family, Enumerable.Range(0, Many).Select(index => Gaskets.Part(Number(index), bore: index % 10 == 0 ? 5 : index % 2 == 0 ? 1 : 9, colour: index % 7)));

        var page = Page(catalogue, first: 20);

        page.Parts.Count.ShouldBe(20);
        page.RowsTouched.ShouldBeLessThan(Many / 10 + 20);
    }

    [Fact]
    public void Prices_that_differ_by_less_than_a_cent_and_any_price_at_all_order_parts()
    {
        (string Number, decimal? Price)[] priced =
            [("A", 10.002m), ("B", 10.001m), ("C", 10.009m), ("D", null), ("E", 1e20m), ("F", 9e19m), ("Z", decimal.MaxValue), ("G", 0m), ("H", -3m), ("I", -4m), ("J", 10.001m)];
        var catalogue = Catalogue.Of(Gaskets.Family(), priced.Select(one => Gaskets.Part(one.Number))).WithStock(priced.Select(one => KeyValuePair.Create(one.Number, new Stock(null, one.Price))));
        string[] expected = ["I", "H", "G", "B", "J", "A", "C", "F", "E", "Z", "D"];

        for (var first = 1; first <= expected.Length; first++) Page(catalogue, first).Parts.Select(part => part.Number).ShouldBe(expected.Take(first));
    }

    [Fact]
    public void An_offer_that_changes_counts_at_once_in_sorted_rows_and_in_the_tail()
    {
        var catalogue = Catalogue.Of(Gaskets.Family(), [Gaskets.Part("A"), Gaskets.Part("B"), Gaskets.Part("C")]);
        Numbers(catalogue).ShouldBe(["A", "B", "C"]);

        var priced = catalogue.WithStock([KeyValuePair.Create("C", new Stock(null, 5m))]);
        Numbers(priced).ShouldBe(["C", "A", "B"]);

        var added = priced.With([Gaskets.Part("D")]).WithStock([KeyValuePair.Create("D", new Stock(2, 9m))]);
        Numbers(added).ShouldBe(["D", "C", "A", "B"]);

        var soldOut = added.WithStock([KeyValuePair.Create("D", new Stock(0, 9m))]).With([Gaskets.Part("C", isOffered: false)]);
        Numbers(soldOut).ShouldBe(["D", "A", "B"]);
        Numbers(soldOut.Sorted()).ShouldBe(["D", "A", "B"]);
        Numbers(catalogue).ShouldBe(["A", "B", "C"], "a snapshot is not disturbed");
    }

    [Fact]
    public void Queries_asked_by_many_threads_at_once_do_not_mix()
    {
        var family = Gaskets.Family();
        var catalogue = Catalogue.Of(family, Enumerable.Range(0, Many).Select(index => Gaskets.Part(Number(index), index % 14, index / 14 % 14, index / 196, index % 9)));
        var needs = Enumerable.Range(0, 14).Select(bore => Gaskets.Need(bore)).ToList();
        var alone = needs.ConvertAll(need => Numbers(catalogue, need));

        Parallel.For(0, 280, asked => Numbers(catalogue, needs[asked % needs.Count]).ShouldBe(alone[asked % needs.Count]));
    }

    private static string Number(int index) => FormattableString.Invariant($"G{index:0000}");

    private static List<string> Numbers(Catalogue catalogue, Need? need = null) => [.. Page(catalogue, first: 30, need).Parts.Select(part => part.Number)];

    private static RankingPage.Listed Page(Catalogue catalogue, int first, Need? need = null) =>
        Ranker.Rank(catalogue, Weights.HandSet(catalogue.Family), new(need ?? Gaskets.Need(), null, first, null)).ShouldBeOfType<RankingPage.Listed>();

    /// <summary>Colour that costs nothing.</summary>
    private sealed class Paint() : Aspect<GasketSpec, GasketSite, Mark>("Paint", isDeciding: false, new("invented for a test", SourceStatus.Practice), new(0, 0, 0))
    {
        public override LookedAt Fields => new([Name], []);

        public override Mark Read(GasketSpec part) => new(part.Colour);

        public override Finding Judge(Need<GasketSpec, GasketSite> need, Mark facet) => Finding.Meets($"Any colour does.");
    }
}
