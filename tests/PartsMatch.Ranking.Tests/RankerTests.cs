using System.Buffers.Text;
using System.Globalization;
using System.Text;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Tests;

/// <summary>Rankings small enough to work out by hand.</summary>
public sealed class RankerTests
{
    private static readonly Family Family = Gaskets.Family();
    private static readonly Weights HandSet = Weights.HandSet(Family);
    private static readonly Dictionary<string, Stock> NoStock = [];

    public static TheoryData<string> Kinds => [.. Families.All.Select(family => family.Kind)];

    [Fact]
    public void At_equal_likelihood_what_is_at_hand_comes_first_then_the_lower_price_then_the_number()
    {
        var stock = new Dictionary<string, Stock>
        {
            ["FAR-CHEAP"] = new(0, 5m),
            ["HERE-DEAR"] = new(2, 80m),
            ["HERE-CHEAP"] = new(1, 20m),
            ["HERE-UNPRICED"] = new(7, null),
            ["b"] = new(null, null),
        };
        var parts = new[] { "b", "B", "HERE-UNPRICED", "FAR-CHEAP", "HERE-DEAR", "HERE-CHEAP" }.Select(number => Gaskets.Part(number));

        Numbers(parts, stock).ShouldBe(["HERE-CHEAP", "HERE-DEAR", "HERE-UNPRICED", "FAR-CHEAP", "B", "b"]);
    }

    [Fact]
    public void At_equal_likelihood_a_discontinued_part_with_none_at_hand_comes_after_those_that_can_be_bought()
    {
        var stock = new Dictionary<string, Stock> { ["GONE"] = new(0, 1m), ["LAST-ONE"] = new(1, 90m), ["MADE"] = new(0, 80m) };
        CataloguePart[] parts = [Gaskets.Part("GONE", isMade: false), Gaskets.Part("GONE-UNTOLD", isMade: false), Gaskets.Part("LAST-ONE", isMade: false), Gaskets.Part("MADE"), Gaskets.Part("MADE-UNTOLD")];

        Numbers(parts, stock).ShouldBe(["LAST-ONE", "MADE", "MADE-UNTOLD", "GONE", "GONE-UNTOLD"]);
    }

    [Fact]
    public void A_discontinued_part_that_fits_better_still_comes_first() =>
        Numbers([Gaskets.Part("NEAR", bore: 7), Gaskets.Part("SAME", isMade: false)], NoStock).ShouldBe(["SAME", "NEAR"]);

    [Fact]
    public void Stock_and_price_never_outweigh_a_better_fit()
    {
        // Two steps of bore: 0.4 of the limit at weight 1. 1 / (1 + e^-(3.5 - 0.4)) = 95.7 %, against 97.1 %: worked by hand.
        var stock = new Dictionary<string, Stock> { ["NEAR"] = new(9, 1m) };
        Numbers([Gaskets.Part("NEAR", bore: 7), Gaskets.Part("SAME")], stock).ShouldBe(["SAME", "NEAR"]);
    }

    [Fact]
    public void The_score_is_shortfall_and_effort_and_gaps_at_their_weights()
    {
        // Worked by hand. Bore 3 steps: 0.6 x 1 + effort 0.5 x 0.5. Thickness: the part's gap, 0.4. Hardness: alike. Colour 10: 2.5 counts as 2, x 0.4.
        var explained = Ranker.Explain(Family, HandSet, Gaskets.Need(), Gaskets.Part("X", bore: 8, thickness: null, colour: 10).Spec);

        explained.Contributions.Select(one => (one.Name, one.Amount.Millionths))
            .ShouldBe([("bore", -850_000), ("thickness", -400_000), ("hardness", 0), ("colour", -800_000)]);
        explained.Score.Value.ShouldBe(-2.05, 1e-12);

        // 100 / (1 + e^-1.45) = 81.0
        explained.Likelihood.ShouldBe(new Likelihood(81, IsHandSet: true));
        explained.Sheet.Fit.ShouldBe(PartFit.CantTellYet);
    }

    [Fact]
    public void An_open_reading_costs_1_in_a_deciding_aspect_and_nothing_in_a_checking_one()
    {
        // Decision 4; the parts' own numbers are all known. 100 / (1 + e^-2.5) = 92.4, worked by hand.
        var explained = Ranker.Explain(Family, HandSet, Gaskets.Need(bore: null, hardness: null), Gaskets.Part("X").Spec);

        explained.Contributions.Select(one => one.Amount.Millionths).ShouldBe([-1_000_000, 0, 0, 0]);
        explained.Likelihood!.Percent.ShouldBe(92);
    }

    [Fact]
    public void A_part_that_fails_has_no_likelihood_and_its_failed_aspect_takes_nothing()
    {
        var explained = Ranker.Explain(Family, HandSet, Gaskets.Need(), Gaskets.Part("X", bore: 11, hardness: 6).Spec);

        explained.Likelihood.ShouldBeNull();
        explained.Contributions.Select(one => one.Amount.Millionths).ShouldBe([0, 0, -450_000, 0]);
    }

    [Theory]
    [InlineData(20, 0, 99)]
    [InlineData(-20, 0, 1)]
    [InlineData(0, 0, 50)]
    [InlineData(3.5, 0, 97)]
    [InlineData(0, -20_000, 50)] // 100 / (1 + e^0.020000) = 49.50002, worked by hand: halves go up
    [InlineData(0, -20_001, 49)] // 49.49999
    public void Likelihood_shows_in_whole_percent_from_1_to_99(double intercept, long millionths, int percent) =>
        Weights.Of(Family, new(WeightsOrigin.Trained, intercept))
            .LikelihoodOf(new(millionths)).ShouldBe(new Likelihood(percent, IsHandSet: false));

    [Fact]
    public void When_nothing_fits_the_nearest_misses_say_what_stands_in_the_way()
    {
        var catalogue = Catalogue.Of(Family,
        [
            Gaskets.Part("THREE", bore: 11, thickness: 11, hardness: 11),
            Gaskets.Part("TWO", bore: 11, thickness: 11),
            Gaskets.Part("ONE-FAR", hardness: 11, bore: 9),
            Gaskets.Part("ONE-NEAR", thickness: 11, bore: 7),
        ]);

        var misses = Ranker.NearestMisses(catalogue, HandSet, Gaskets.Need(), 10);

        misses.Select(miss => $"{miss.Number}: {string.Join(" ", miss.InTheWay.Select(one => one.Aspect.Name))}")
            .ShouldBe(["ONE-NEAR: thickness", "ONE-FAR: hardness", "TWO: bore thickness"]);
        misses[0].InTheWay[0].Finding.Sentence.ShouldBe("6 steps apart; 5 are the most.");
    }

    [Fact]
    public void A_part_that_is_left_out_is_in_no_list_of_a_query_and_in_no_count()
    {
        var catalogue = Catalogue.Of(Family, [Gaskets.Part("OLD"), Gaskets.Part("NEW"), Gaskets.Part("MISS", bore: 11)]);

        Ranker.Rank(catalogue, HandSet, new(Gaskets.Need(), null, 10, null)).ShouldBeOfType<RankingPage.Listed>().Parts.Count.ShouldBe(2);
        Ranker.Rank(catalogue, HandSet, new(Gaskets.Need(), null, 10, null, "OLD")).ShouldBeOfType<RankingPage.Listed>().Parts.Single().Number.ShouldBe("NEW");
        Ranker.CountByFit(catalogue, Gaskets.Need(), "OLD").Values.Sum().ShouldBe(2);
        Ranker.NearestMisses(catalogue, HandSet, Gaskets.Need(), 10, "MISS").ShouldBeEmpty();
    }

    [Fact]
    public void A_cursor_of_other_weights_has_expired()
    {
        var cursor = Page(HandSet, null).ShouldBeOfType<RankingPage.Listed>().Parts[0].Cursor;
        var others = Weights.Of(Family, new(WeightsOrigin.Trained, 3.4));

        Page(HandSet, cursor).ShouldBeOfType<RankingPage.Listed>().Parts.ShouldNotBeEmpty();
        Page(others, cursor).ShouldBeOfType<RankingPage.CursorExpired>();
    }

    [Theory]
    [InlineData("")]
    [InlineData("what?")]
    [InlineData("YQ")] // "a"
    [InlineData("gICA")] // not UTF-8
    public void A_text_that_is_no_cursor_is_malformed(string cursor) => Page(HandSet, cursor).ShouldBeOfType<RankingPage.CursorMalformed>();

    [Theory]
    [InlineData("ID|97|1|5|")]
    [InlineData("ID|97|3|5|X")]
    [InlineData("ID|-1|1|5|X")]
    [InlineData("ID|97|1|5,0|X")]
    [InlineData("ID|97|1|1e9|X")]
    public void A_tampered_cursor_is_malformed(string content) =>
        Page(HandSet, Base64Url.EncodeToString(Encoding.UTF8.GetBytes(content.Replace("ID", HandSet.Id, StringComparison.Ordinal)))).ShouldBeOfType<RankingPage.CursorMalformed>();

    [Fact]
    public void An_overlong_cursor_is_malformed() => Page(HandSet, new string('A', 1_000_000)).ShouldBeOfType<RankingPage.CursorMalformed>();

    [Fact]
    public void Cursors_are_the_same_on_a_German_machine()
    {
        var before = CultureInfo.CurrentCulture;
        var stock = new Dictionary<string, Stock> { ["A"] = new(1, 1234.5m), ["B"] = new(1, 1234.6m) };
        var catalogue = Catalogue.Of(Family, [Gaskets.Part("A"), Gaskets.Part("B")]);
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("en-US");
            var english = First(null);
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            First(null).Cursor.ShouldBe(english.Cursor);
            First(english.Cursor).Number.ShouldBe("B");
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        RankedPart First(string? after) => Ranker.Rank(catalogue.WithStock(stock), HandSet, new(Gaskets.Need(), null, 1, after)).ShouldBeOfType<RankingPage.Listed>().Parts.ShouldHaveSingleItem();
    }

    [Fact]
    public void Weights_of_another_kind_are_a_programmers_mistake()
    {
        var other = Families.All[0];
        Should.Throw<ArgumentException>(() => Ranker.Rank(Catalogue.Of(Family, []), Weights.HandSet(other), new(Gaskets.Need(), null, 10, null)));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_real_family_ranks_under_its_hand_set_weights(string kind)
    {
        var family = Families.Find(kind)!;
        var (weights, need) = (Weights.HandSet(family), family.ReadNeed(new(null, [], [])).Need);
        var catalogue = Catalogue.Of(family, [new("BLANK", family.ReadSpec([]).Spec, true)]);

        var counts = Ranker.CountByFit(catalogue, need);
        var page = Ranker.Rank(catalogue, weights, new(need, null, 10, null)).ShouldBeOfType<RankingPage.Listed>();

        counts.Values.Sum().ShouldBe(1);
        page.Parts.Count.ShouldBe(1 - counts[PartFit.DoesntFit]);
        weights.Aspects.Keys.ShouldBe(family.Aspects.Select(aspect => aspect.Name), ignoreOrder: true);
    }

    private static RankingPage Page(Weights weights, string? after) =>
        Ranker.Rank(Catalogue.Of(Family, [Gaskets.Part("A"), Gaskets.Part("B")]), weights, new(Gaskets.Need(), null, 1, after));

    private static IEnumerable<string> Numbers(IEnumerable<CataloguePart> parts, IReadOnlyDictionary<string, Stock> stock) =>
        Ranker.Rank(Catalogue.Of(Family, parts).WithStock(stock), HandSet, new(Gaskets.Need(), null, 10, null)).ShouldBeOfType<RankingPage.Listed>().Parts.Select(part => part.Number);
}
