using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Tests;

/// <summary>The engine is held to judging every part in full, whatever was written, retired, stocked, sorted, and in whatever order.</summary>
public sealed class EnginePropertyTests
{
    [Property(MaxTest = 300)]
    public Property Whatever_was_done_pages_counts_and_misses_are_those_of_a_plain_list() => Prop.ForAll(
        (from one in Cases.All
         from deeds in Deeds.All
         from pageSize in Gen.Choose(1, 9)
         from include in Gen.SubListOf(Enum.GetValues<PartFit>())
         select (one, deeds, pageSize, include: include.ToHashSet())).ToArbitrary(),
        given =>
        {
            var (catalogue, plain) = Deeds.Done(given.one, given.deeds);

            Deeds.Pages(catalogue, plain, given.pageSize).Select(part => part.Number).ShouldBe(plain.ByBruteForce(new HashSet<PartFit> { PartFit.DropIn, PartFit.FitsWithChanges, PartFit.CantTellYet }));
            foreach (var part in Deeds.Pages(catalogue, plain, given.pageSize))
            {
                var alone = Ranker.Explain(plain.Family, plain.Weights, plain.Need, plain.Parts.Single(other => other.Number == part.Number).Spec, part.Number);
                (part.Fit, part.Explained.Score, part.Explained.Likelihood, part.Likelihood).ShouldBe((alone.Sheet.Fit, alone.Score, alone.Likelihood, alone.Likelihood!));
                part.Stock.ShouldBe(plain.Stock.GetValueOrDefault(part.Number, Stock.Unknown));
            }

            var included = Ranker.Rank(catalogue, plain.Weights, new(plain.Need, given.include, given.pageSize, null)).ShouldBeOfType<RankingPage.Listed>();
            included.Parts.Select(part => part.Number).ShouldBe(plain.ByBruteForce(given.include).Take(given.pageSize));

            var anew = plain.Catalogue.WithStock(plain.Stock);
            Ranker.CountByFit(catalogue, plain.Need).ShouldBe(plain.Parts.Where(part => part.IsOffered).Select(part => plain.Family.Judge(plain.Need, part.Spec).Fit)
                .Concat(Enum.GetValues<PartFit>()).CountBy(fit => fit).Select(pair => KeyValuePair.Create(pair.Key, pair.Value - 1)), ignoreOrder: true);
            Ranker.NearestMisses(catalogue, plain.Weights, plain.Need, given.pageSize).Select(miss => (miss.Number, miss.Explained.Score))
                .ShouldBe(Ranker.NearestMisses(anew, plain.Weights, plain.Need, given.pageSize).Select(miss => (miss.Number, miss.Explained.Score)));
            catalogue.Offered.ShouldBe(plain.Parts.Count(part => part.IsOffered));
        });

    [Property(MaxTest = 100)]
    public Property A_snapshot_that_was_taken_answers_the_same_whatever_is_written_after() => Prop.ForAll(
        Cases.All.Zip(Deeds.All).ToArbitrary(),
        given =>
        {
            var (one, deeds) = given;
            var taken = one.Catalogue.WithStock(one.Stock);
            var before = Deeds.Pages(taken, one, 7).Select(part => (part.Number, part.Cursor)).ToList();
            Deeds.Done(one, deeds, taken);
            Deeds.Pages(taken, one, 7).Select(part => (part.Number, part.Cursor)).ShouldBe(before);
        });
}
