using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace PartsMatch.Ranking.Tests;

/// <summary>Snapshots, and what a query judges of them.</summary>
public sealed class CatalogueTests
{
    [Property(MaxTest = 200)]
    public Property Adding_and_replacing_parts_gives_what_a_catalogue_of_the_merged_list_gives() => Prop.ForAll(
        (from one in Cases.All
         from taken in Gen.Choose(0, one.Parts.Count)
         from specs in Cases.Spec.ListOf(one.Parts.Count)
         from replaced in Gen.Choose(0, 1).ListOf(one.Parts.Count)
         select (one, taken, specs, replaced)).ToArbitrary(),
        given =>
        {
            var before = given.one.Parts.Select((part, index) => given.replaced[index] == 1 ? part with { Spec = given.specs[index] } : part).Take(given.taken).ToList();
            var changed = given.one.Parts.Where((_, index) => index >= given.taken || given.replaced[index] == 1).ToList();
            var snapshot = Catalogue.Of(given.one.Family, before);
            var after = snapshot.With(changed);

            foreach (var same in (Catalogue[])[after, after.Sorted()])
            {
                var (with, of) = (Page(same, given.one), Page(given.one.Catalogue, given.one));
                with.Select(part => (part.Number, part.Cursor, part.Explained.Score)).ShouldBe(of.Select(part => (part.Number, part.Cursor, part.Explained.Score)));
                Ranker.CountByFit(same, given.one.Need).ShouldBe(Ranker.CountByFit(given.one.Catalogue, given.one.Need));
            }

            var untouched = given.one with { Parts = before };
            Page(snapshot, given.one).Select(part => part.Number).ShouldBe(Page(untouched.Catalogue, untouched).Select(part => part.Number));
        });

    [Property(MaxTest = 100)]
    public Property Each_distinct_facet_is_judged_at_most_once_a_query() => Prop.ForAll(Cases.All.ToArbitrary(), one =>
    {
        var catalogue = one.Catalogue;
        foreach (var aspect in one.Family.Aspects.OfType<GasketAspect>()) aspect.Judged.Clear();
        Ranker.Rank(catalogue.WithStock(one.Stock), one.Weights, new(one.Need, null, 5, null));
        foreach (var aspect in one.Family.Aspects.OfType<GasketAspect>()) aspect.Judged.Values.ShouldAllBe(times => times == 1);
    });

    [Fact]
    public void A_part_is_judged_no_further_than_its_first_failure()
    {
        var (bore, thickness) = (new Bore(), new Thickness());
        var family = Gaskets.Family(bore, thickness);
        var catalogue = Catalogue.Of(family, [Gaskets.Part("FITS"), Gaskets.Part("FAILS", bore: 11, thickness: 7)]);

        Ranker.Rank(catalogue, Weights.HandSet(family), new(Gaskets.Need(), null, 10, null));

        bore.Judged.Keys.Select(key => key.Facet.Number).ShouldBe([5, 11], ignoreOrder: true);
        thickness.Judged.Keys.Select(key => key.Facet.Number).ShouldBe([5]);
    }

    [Fact]
    public void What_follows_from_a_spec_is_judged_as_if_it_had_been_read()
    {
        var family = Gaskets.Family();
        var catalogue = Catalogue.Of(family, [Gaskets.Part("DEDUCED", thickness: null, hardness: 9)]);

        // A hardness of 9 implies a thickness of 9: four steps from 5, an even number, so nothing is changed and nothing unknown.
        Ranker.CountByFit(catalogue, Gaskets.Need())[Fit.Judging.PartFit.DropIn].ShouldBe(1);
    }

    [Fact]
    public void A_retired_part_is_found_by_its_number_and_never_offered()
    {
        var family = Gaskets.Family();
        var catalogue = Catalogue.Of(family, [Gaskets.Part("OLD", isOffered: false), Gaskets.Part("OLD-MISS", bore: 11, isOffered: false)]);

        catalogue.IsOffered("OLD").ShouldBe(false);
        catalogue.IsOffered("old").ShouldBeNull();
        catalogue.Offered.ShouldBe(0);
        Ranker.Rank(catalogue, Weights.HandSet(family), new(Gaskets.Need(), null, 10, null)).ShouldBeOfType<RankingPage.Listed>().Parts.ShouldBeEmpty();
        Ranker.NearestMisses(catalogue, Weights.HandSet(family), Gaskets.Need(), 10).ShouldBeEmpty();
        Ranker.CountByFit(catalogue, Gaskets.Need()).Values.ShouldAllBe(count => count == 0);
    }

    private static IReadOnlyList<RankedPart> Page(Catalogue catalogue, Case one) =>
        Ranker.Rank(catalogue.WithStock(one.Stock), one.Weights, new(one.Need, null, 1000, null)).ShouldBeOfType<RankingPage.Listed>().Parts;
}
