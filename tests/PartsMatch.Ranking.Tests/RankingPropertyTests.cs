using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Tests;

/// <summary>What holds for every catalogue, need and weights.</summary>
public sealed class RankingPropertyTests
{
    private static readonly IReadOnlySet<PartFit> MayFit = new HashSet<PartFit> { PartFit.DropIn, PartFit.FitsWithChanges, PartFit.CantTellYet };

    [Property(MaxTest = 300)]
    public Property The_page_is_what_judging_every_part_in_full_filtering_and_sorting_gives() => Prop.ForAll(
        (from one in Cases.All
         from include in Gen.SubListOf(Enum.GetValues<PartFit>())
         from first in Gen.Choose(0, 12)
         select (one, include: include.ToHashSet(), first)).ToArbitrary(),
        given =>
        {
            var page = Ranker.Rank(given.one.Catalogue.WithStock(given.one.Stock), given.one.Weights, new(given.one.Need, given.include, given.first, null)).ShouldBeOfType<RankingPage.Listed>();
            var expected = given.one.ByBruteForce(given.include).ToList();
            page.Parts.Select(part => part.Number).ShouldBe(expected.Take(given.first));
            page.HasNextPage.ShouldBe(expected.Count > given.first);
        });

    [Property(MaxTest = 200)]
    public Property Pages_put_together_are_the_whole_list_each_passing_part_once() => Prop.ForAll(
        Cases.All.Zip(Gen.Choose(1, 9)).ToArbitrary(),
        given => given.Item1.AllPages(given.Item2).Select(part => part.Number).ShouldBe(given.Item1.ByBruteForce(MayFit)));

    [Property(MaxTest = 200)]
    public Property Parts_whose_stock_stays_are_seen_once_even_when_that_of_others_changes_between_pages() => Prop.ForAll(
        (from one in Cases.All
         from changes in Gen.Elements(new Stock(null, null), new Stock(0, 1m), new Stock(9, 99m)).ListOf(one.Parts.Count)
         from which in Gen.Choose(0, 1).ListOf(one.Parts.Count)
         from pageSize in Gen.Choose(1, 5)
         select (one, changes, which, pageSize)).ToArbitrary(),
        given =>
        {
            var changed = given.one.Parts.Select((part, index) => (part.Number, index)).Where(pair => given.which[pair.index] == 1).ToDictionary(pair => pair.Number, pair => given.changes[pair.index]);
            var after = new Dictionary<string, Stock>(given.one.Stock);
            foreach (var (number, stock) in changed) after[number] = stock;
            var first = Ranker.Rank(given.one.Catalogue.WithStock(given.one.Stock), given.one.Weights, new(given.one.Need, null, given.pageSize, null)).ShouldBeOfType<RankingPage.Listed>();
            var rest = first.HasNextPage
                ? Ranker.Rank(given.one.Catalogue.WithStock(after), given.one.Weights, new(given.one.Need, null, 1000, first.Parts[^1].Cursor)).ShouldBeOfType<RankingPage.Listed>().Parts
                : [];
            var seen = first.Parts.Concat(rest).Select(part => part.Number).Where(number => !changed.ContainsKey(number));
            var expected = given.one.ByBruteForce(MayFit).Where(number => !changed.ContainsKey(number));
            if (first.HasNextPage) seen.ShouldBe(expected);
            else seen.ShouldBe(expected, ignoreOrder: true);
        });

    [Property(MaxTest = 300)]
    public Property Lowering_a_shortfall_never_lowers_a_rank() => Prop.ForAll(
        (from one in Cases.All
         where one.Parts.Count > 0
         from which in Gen.Choose(0, one.Parts.Count - 1)
         from lower in Gen.Choose(0, 12)
         select (one, which, lower)).ToArbitrary(),
        given =>
        {
            // The colour's shortfall grows with its number and nothing else depends on it.
            var (one, part) = (given.one, given.one.Parts[given.which]);
            var spec = (GasketSpec)part.Spec;
            if (spec.Colour is not { } colour || given.lower > colour) return;
            var better = one with { Parts = [.. one.Parts.Select(other => other == part ? part with { Spec = spec with { Colour = given.lower } } : other)] };
            Place(better, part.Number).ShouldBeLessThanOrEqualTo(Place(one, part.Number));
        });

    [Property(MaxTest = 200)]
    public Property A_failed_aspect_never_ranks_under_any_weights() => Prop.ForAll(Cases.All.ToArbitrary(), one =>
    {
        foreach (var part in one.AllPages(7))
        {
            part.Explained.Sheet.Failures.ShouldBeEmpty(part.Number);
            one.Parts.Single(other => other.Number == part.Number).IsOffered.ShouldBeTrue();
        }
    });

    [Property(MaxTest = 200)]
    public Property Contributions_are_never_positive_and_sum_exactly_in_any_order() => Prop.ForAll(Cases.All.ToArbitrary(), one =>
    {
        var backwards = Gaskets.Family([.. one.Family.Aspects.Reverse()]);
        var same = Weights.Of(backwards, new(one.Weights.Origin, one.Weights.Intercept) { Aspects = one.Weights.Aspects, Pairs = one.Weights.Pairs.ToDictionary(pair => pair.Pair.Name, pair => pair.Cost), Records = one.Weights.Records });
        foreach (var part in one.Parts)
        {
            var explained = Ranker.Explain(one.Family, one.Weights, one.Need, part.Spec, part.Number);
            explained.Contributions.ShouldAllBe(contribution => contribution.Amount.Millionths <= 0);
            explained.Contributions.Sum(contribution => contribution.Amount.Millionths).ShouldBe(explained.Score.Millionths);
            Ranker.Explain(backwards, same, one.Need, part.Spec, part.Number).Score.ShouldBe(explained.Score);
        }
    });

    [Property(MaxTest = 200)]
    public Property A_ranked_part_is_explained_as_if_it_were_asked_for_alone() => Prop.ForAll(Cases.All.ToArbitrary(), one =>
    {
        foreach (var ranked in one.AllPages(50))
        {
            var alone = Ranker.Explain(one.Family, one.Weights, one.Need, one.Parts.Single(part => part.Number == ranked.Number).Spec, ranked.Number);
            ranked.Explained.Score.ShouldBe(alone.Score);
            ranked.Likelihood.ShouldBe(alone.Likelihood);
            ranked.Explained.Contributions.ShouldBe(alone.Contributions);
            ranked.Explained.Sheet.Findings.Select(one => one.Finding.Sentence).ShouldBe(alone.Sheet.Findings.Select(one => one.Finding.Sentence));
        }
    });

    [Property(MaxTest = 200)]
    public Property Counts_by_fit_are_those_of_all_offered_parts() => Prop.ForAll(Cases.All.ToArbitrary(), one =>
    {
        var expected = one.Parts.Where(part => part.IsOffered).CountBy(part => one.Family.Judge(one.Need, part.Spec).Fit).ToDictionary();
        foreach (var (fit, count) in Ranker.CountByFit(one.Catalogue, one.Need)) count.ShouldBe(expected.GetValueOrDefault(fit), fit.ToString());
    });

    [Property(MaxTest = 200)]
    public Property Nearest_misses_are_those_with_one_failure_and_then_two_best_of_the_rest_first() => Prop.ForAll(Cases.All.Zip(Gen.Choose(0, 8)).ToArbitrary(), given =>
    {
        var (one, first) = given;
        var expected = one.Parts.Where(part => part.IsOffered)
            .Select(part => (part, explained: Ranker.Explain(one.Family, one.Weights, one.Need, part.Spec, part.Number), line: one.Stock.GetValueOrDefault(part.Number)))
            .Where(each => each.explained.Sheet.Failures.Count() is 1 or 2)
            .OrderBy(each => each.explained.Sheet.Failures.Count())
            .ThenByDescending(each => each.explained.Score.Millionths)
            .ThenByDescending(each => each.line?.OnHand > 0)
            .ThenByDescending(each => each.line?.OnHand > 0 || each.part.IsMade)
            .ThenBy(each => each.line?.Price ?? decimal.MaxValue)
            .ThenBy(each => each.part.Number, StringComparer.Ordinal)
            .Select(each => each.part.Number);
        Ranker.NearestMisses(one.Catalogue.WithStock(one.Stock), one.Weights, one.Need, first).Select(miss => miss.Number)
            .ShouldBe(expected.Take(first));
    });

    private static int Place(Case one, string number) => one.AllPages(1000).Select(part => part.Number).ToList().IndexOf(number);
}
