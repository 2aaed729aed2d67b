using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Tests;

/// <summary>The engine is held to judging every part in full, whatever was written, retired, stocked, sorted, and in whatever order.</summary>
public sealed class EnginePropertyTests
{
    private enum Deed
    {
        Put,
        Retire,
        Discontinue,
        Stock,
        Sort,
        BeginSorting,
        EndSorting,
    }

    private static Gen<List<(Deed Deed, int Which, GasketSpec Spec, int Amount)>> Deeds { get; } =
        (from deed in Gen.Frequency(
            (6, Gen.Constant(Deed.Put)), (2, Gen.Constant(Deed.Retire)), (1, Gen.Constant(Deed.Discontinue)), (3, Gen.Constant(Deed.Stock)),
            (1, Gen.Constant(Deed.Sort)), (1, Gen.Constant(Deed.BeginSorting)), (1, Gen.Constant(Deed.EndSorting)))
         from which in Gen.Choose(0, 59)
         from spec in Cases.Spec
         from amount in Gen.Choose(0, 3)
         select (deed, which, spec, amount)).ListOf().Resize(120).Select(deeds => deeds.ToList());

    [Property(MaxTest = 300)]
    public Property Whatever_was_done_pages_counts_and_misses_are_those_of_a_plain_list() => Prop.ForAll(
        (from one in Cases.All
         from deeds in Deeds
         from pageSize in Gen.Choose(1, 9)
         from include in Gen.SubListOf(Enum.GetValues<PartFit>())
         select (one, deeds, pageSize, include: include.ToHashSet())).ToArbitrary(),
        given =>
        {
            var (catalogue, plain) = Done(given.one, given.deeds);

            Pages(catalogue, plain, given.pageSize).Select(part => part.Number).ShouldBe(plain.ByBruteForce(new HashSet<PartFit> { PartFit.DropIn, PartFit.FitsWithChanges, PartFit.CantTellYet }));
            foreach (var part in Pages(catalogue, plain, given.pageSize))
            {
                var alone = Ranker.Explain(plain.Family, plain.Weights, plain.Need, plain.Parts.Single(other => other.Number == part.Number).Spec);
                (part.Explained.Score, part.Explained.Likelihood, part.Likelihood).ShouldBe((alone.Score, alone.Likelihood, alone.Likelihood!));
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
        Cases.All.Zip(Deeds).ToArbitrary(),
        given =>
        {
            var (one, deeds) = given;
            var taken = one.Catalogue.WithStock(one.Stock);
            var before = Pages(taken, one, 7).Select(part => (part.Number, part.Cursor)).ToList();
            Done(one, deeds, taken);
            Pages(taken, one, 7).Select(part => (part.Number, part.Cursor)).ShouldBe(before);
        });

    /// <summary>Does all deeds to a catalogue, and to a plain list.</summary>
    private static (Catalogue Catalogue, Case Plain) Done(Case one, List<(Deed Deed, int Which, GasketSpec Spec, int Amount)> deeds, Catalogue? start = null)
    {
        var catalogue = start ?? one.Catalogue.WithStock(one.Stock);
        var (parts, stock) = (one.Parts.ToDictionary(part => part.Number), new Dictionary<string, Stock>(one.Stock));
        (Catalogue Before, Catalogue Sorted)? sorting = null;
        foreach (var (deed, which, spec, amount) in deeds)
        {
            // Most deeds meet a part that is there; some bring a new one.
            var number = which < one.Parts.Count ? one.Parts[which].Number : FormattableString.Invariant($"NEW-{which}");
            var part = parts.GetValueOrDefault(number) ?? new(number, spec, IsOffered: true);
            switch (deed)
            {
                case Deed.Put: Put(part with { Spec = spec, IsOffered = true, IsMade = amount > 0 }); break;
                case Deed.Retire: Put(part with { IsOffered = false }); break;
                case Deed.Discontinue: Put(part with { IsMade = false }); break;
                case Deed.Stock:
                    var line = new Stock(amount == 0 ? null : amount - 1, amount == 3 ? null : which);
                    catalogue = catalogue.WithStock([KeyValuePair.Create(number, line)]);
                    if (parts.ContainsKey(number)) stock[number] = line;
                    break;
                case Deed.Sort: (catalogue, sorting) = (catalogue.Sorted(), null); break;
                case Deed.BeginSorting: sorting = (catalogue, catalogue.Sorted()); break;
                case Deed.EndSorting: (catalogue, sorting) = (sorting is var (before, sorted) ? sorted.CaughtUp(before, catalogue) : catalogue, null); break;
            }
        }

        return (catalogue, one with { Parts = [.. parts.Values], Stock = stock });

        void Put(CataloguePart changed)
        {
            parts[changed.Number] = changed;
            catalogue = catalogue.With([changed]);
        }
    }

    private static List<RankedPart> Pages(Catalogue catalogue, Case one, int pageSize)
    {
        List<RankedPart> all = [];
        for (string? after = null; ;)
        {
            var page = Ranker.Rank(catalogue, one.Weights, new(one.Need, null, pageSize, after)).ShouldBeOfType<RankingPage.Listed>();
            all.AddRange(page.Parts);
            if (!page.HasNextPage) return all;
            after = page.Parts[^1].Cursor;
        }
    }
}
