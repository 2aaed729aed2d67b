using FsCheck;
using FsCheck.Fluent;
using PartsMatch.Ranking.Columns;

namespace PartsMatch.Ranking.Tests;

/// <summary>What may happen to a catalogue.</summary>
public enum Deed
{
    Put,
    Retire,
    Discontinue,
    Stock,
    Sort,
    BeginSorting,
    EndSorting,
    WriteAndRead,
}

/// <summary>Things done to a catalogue, one after the other, and to a plain list.</summary>
internal static class Deeds
{
    public static Gen<List<(Deed Deed, int Which, GasketSpec Spec, int Amount)>> All { get; } =
        (from deed in Gen.Frequency(
            (6, Gen.Constant(Deed.Put)), (2, Gen.Constant(Deed.Retire)), (1, Gen.Constant(Deed.Discontinue)), (3, Gen.Constant(Deed.Stock)),
            (1, Gen.Constant(Deed.Sort)), (1, Gen.Constant(Deed.BeginSorting)), (1, Gen.Constant(Deed.EndSorting)), (1, Gen.Constant(Deed.WriteAndRead)))
         from which in Gen.Choose(0, 59)
         from spec in Cases.Spec
         from amount in Gen.Choose(0, 3)
         select (deed, which, spec, amount)).ListOf().Resize(120).Select(deeds => deeds.ToList());

    /// <summary>Does all deeds to a catalogue, and to a plain list.</summary>
    public static (Catalogue Catalogue, Case Plain) Done(Case one, List<(Deed Deed, int Which, GasketSpec Spec, int Amount)> deeds, Catalogue? start = null)
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
                case Deed.WriteAndRead: (catalogue, sorting) = (ReadBack(catalogue), null); break;
            }
        }

        return (catalogue, one with { Parts = [.. parts.Values], Stock = stock });

        void Put(CataloguePart changed)
        {
            parts[changed.Number] = changed;
            catalogue = catalogue.With([changed]);
        }
    }

    /// <summary>All parts that may fit, put together from pages of so many.</summary>
    public static List<RankedPart> Pages(Catalogue catalogue, Case one, int pageSize)
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

    /// <summary>A catalogue as columns.</summary>
    public static byte[] Written(Catalogue catalogue, long asOf = 0)
    {
        using var to = new MemoryStream();
        catalogue.WriteTo(to, asOf);
        return to.ToArray();
    }

    private static Catalogue ReadBack(Catalogue catalogue)
    {
        using var from = new MemoryStream(Written(catalogue));
        return Catalogue.ReadFrom(from, catalogue.Family).ShouldBeOfType<ColumnsReading.Read>().Catalogue;
    }
}
