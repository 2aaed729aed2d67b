using System.Collections.Immutable;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;
using PartsMatch.Store;

namespace PartsMatch.Service.Counter;

/// <summary>The catalogue at one moment, for good: what one request sees of it, whatever is written meanwhile.</summary>
/// <remarks>Ranking knows parts by their numbers' keys: a number that is spelt anew stays the same part.</remarks>
public sealed class Shelf
{
    private readonly CatalogueSnapshot _stored;
    private readonly ImmutableDictionary<Family, Catalogue> _catalogues;

    private Shelf(CatalogueSnapshot stored, ImmutableDictionary<Family, Catalogue> catalogues, ImmutableDictionary<string, Stock> stock) =>
        (_stored, _catalogues, Stock) = (stored, catalogues, stock);

    public long Revision => _stored.Revision;

    /// <summary>What is at hand, by the key of a part's number.</summary>
    public ImmutableDictionary<string, Stock> Stock { get; }

    /// <summary>Every part, retired ones too, in the order of their numbers.</summary>
    public IEnumerable<CatalogueEntry> Parts => _stored.Parts.Select(Show).OfType<CatalogueEntry>();

    /// <summary>The parts of a family as ranking holds them.</summary>
    public Catalogue Of(Family family) => _catalogues[family];

    /// <summary>The part of a number, retired ones too.</summary>
    public CatalogueEntry? Find(string number) => _stored.Find(number) is { } part ? Show(part) : null;

    /// <summary>The parts that a part replaced, by what is said of them, in the order of their numbers.</summary>
    public IReadOnlyList<CatalogueEntry> ReplacedBy(string number)
    {
        var key = PartNumber.Key(number);
        return [.. _stored.Parts.Where(part => part.SupersededBy.Any(by => PartNumber.Key(by.Number) == key)).Select(Show).OfType<CatalogueEntry>()];
    }

    /// <summary>Null for a kind that this version does not know: a later one wrote it.</summary>
    public CatalogueEntry? Show(StoredPart part) => Families.Find(part.Kind) is { } family ? new(family, part, _stored.Stock(part.Number)) : null;

    internal static Shelf Of(CatalogueSnapshot stored)
    {
        var empty = new Shelf(stored, Families.All.ToImmutableDictionary(family => family, family => Catalogue.Of(family, [])), ImmutableDictionary<string, Stock>.Empty);
        return empty.With(stored, stored.Parts, stored.AllStock);
    }

    internal Shelf With(CatalogueSnapshot stored, IReadOnlyCollection<StoredPart> parts, IReadOnlyCollection<StockLine> stock)
    {
        var catalogues = _catalogues.ToBuilder();
        foreach (var changed in parts.GroupBy(part => Families.Find(part.Kind)))
        {
            if (changed.Key is { } family) catalogues[family] = catalogues[family].With(changed.AsParallel().AsOrdered().Select(part => InRanking(family, part)));
        }

        return new(stored, catalogues.ToImmutable(), Stock.SetItems(stock.Select(line => KeyValuePair.Create(PartNumber.Key(line.Number), new Stock(line.OnHand, line.Price)))));
    }

    private static CataloguePart InRanking(Family family, StoredPart part) =>
        new(PartNumber.Key(part.Number), new CatalogueEntry(family, part, stock: null).Spec, part.Status != PartStatus.Retired, part.Status != PartStatus.Discontinued);
}
