using System.Collections.Immutable;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;
using PartsMatch.Ranking.Unknowns;
using PartsMatch.Store;

namespace PartsMatch.Service.Counter;

/// <summary>The catalogue at one moment, for good: what one request sees of it, whatever is written meanwhile.</summary>
/// <remarks>Ranking knows parts by their numbers' keys: a number that is spelt anew stays the same part.</remarks>
public sealed class Shelf
{
    private readonly CatalogueSnapshot _stored;
    private readonly ImmutableDictionary<Family, Catalogue> _catalogues;
    private readonly ImmutableDictionary<Family, KnownMachines> _machines;

    private Shelf(CatalogueSnapshot stored, ImmutableDictionary<Family, Catalogue> catalogues, ImmutableDictionary<Family, KnownMachines> machines) =>
        (_stored, _catalogues, _machines) = (stored, catalogues, machines);

    public long Revision => _stored.Revision;

    /// <summary>Parts, retired ones too, in the order of their numbers' keys.</summary>
    /// <param name="family">Of which family; of all when null.</param>
    /// <param name="after">Those whose number's key comes after this one; all when null.</param>
    public IEnumerable<CatalogueEntry> Parts(Family? family, string? after) => _stored.Kept(family?.Kind, after).Select(Show).OfType<CatalogueEntry>();

    /// <summary>The parts of a family as ranking holds them.</summary>
    public Catalogue Of(Family family) => _catalogues[family];

    /// <summary>The machines of a family whose plates are known: what an unread plate may say.</summary>
    public KnownMachines MachinesOf(Family family) => _machines[family];

    /// <summary>The part of a number, retired ones too.</summary>
    public CatalogueEntry? Find(string number) => _stored.FindKept(number) is { } kept ? Show(kept) : null;

    /// <summary>The parts that a part replaced, by what is said of them, in the order of their numbers.</summary>
    public IReadOnlyList<CatalogueEntry> ReplacedBy(string number) => [.. _stored.ReplacedBy(number).Select(Show).OfType<CatalogueEntry>()];

    /// <summary>Null for a kind that this version does not know: a later one wrote it.</summary>
    public CatalogueEntry? Show(StoredPart part) => Show(new KeptPart(part, _stored.Stock(part.Number)));

    private static CatalogueEntry? Show(KeptPart kept) => Families.Find(kept.Part.Kind) is { } family ? new(family, kept.Part, kept.Stock) : null;

    /// <summary>The shelf of a catalogue, out of files where these hold it.</summary>
    /// <returns>The shelf, and whether all of it was read from files.</returns>
    internal static (Shelf Shelf, bool IsRead) Of(CatalogueSnapshot stored, ColumnFiles files)
    {
        var (catalogues, machines, isRead) = (ImmutableDictionary.CreateBuilder<Family, Catalogue>(), ImmutableDictionary.CreateBuilder<Family, KnownMachines>(), true);
        foreach (var family in Families.All)
        {
            var read = stored.Digest is { } digest ? files.ReadCatalogue(family, digest) : null;
            isRead = isRead && read is not null;
            catalogues[family] = read ?? InRanking(family, stored);
            machines[family] = (stored.Digest is { } its ? files.ReadMachines(family, its, Find) : null) ?? KnownMachines.Of(catalogues[family], Find);

            CataloguePart Find(string number) => InRanking(family, stored.Find(number)!);
        }

        return (new(stored, catalogues.ToImmutable(), machines.ToImmutable()), isRead);
    }

    /// <summary>The shelf after a group of writes: the parts and the stock lines of which anything was said.</summary>
    internal Shelf With(CatalogueSnapshot stored, IReadOnlyCollection<StoredPart> parts, IReadOnlyCollection<StockLine> stock)
    {
        var (catalogues, machines) = (_catalogues.ToBuilder(), _machines.ToBuilder());
        foreach (var changed in parts.GroupBy(part => Families.Find(part.Kind)))
        {
            if (changed.Key is not { } family) continue;
            List<CataloguePart> read = [.. changed.AsParallel().AsOrdered().Select(part => InRanking(family, part))];
            (catalogues[family], machines[family]) = (catalogues[family].With(read), machines[family].With(read));
        }

        // A part that comes back, or is another kind's now, has the line that it had.
        List<KeyValuePair<string, Stock>> lines = [.. parts.Select(part => stored.Stock(part.Number)).OfType<StockLine>().Concat(stock).Select(InRanking)];
        foreach (var family in Families.All) catalogues[family] = catalogues[family].WithStock(lines);
        return new(stored, catalogues.ToImmutable(), machines.ToImmutable());
    }

    /// <summary>A part's number as ranking has it, in its catalogue, its stock and its records of what came back, however somebody writes it.</summary>
    public static string NumberInRanking(string number) => PartNumber.Key(number);

    /// <summary>The same shelf with a family's parts sorted anew.</summary>
    internal Shelf WithSorted(Family family, Catalogue sorted) => new(_stored, _catalogues.SetItem(family, sorted), _machines);

    private static Catalogue InRanking(Family family, CatalogueSnapshot stored) => Catalogue
        .Of(family, stored.Kept(family.Kind).Select(kept => InRanking(family, kept.Part)))
        .WithStock(stored.Kept(family.Kind).Select(kept => kept.Stock).OfType<StockLine>().Select(InRanking));

    private static CataloguePart InRanking(Family family, StoredPart part) =>
        new(NumberInRanking(part.Number), new CatalogueEntry(family, part, stock: null).Spec, part.Status != PartStatus.Retired, part.Status != PartStatus.Discontinued);

    private static KeyValuePair<string, Stock> InRanking(StockLine line) => new(NumberInRanking(line.Number), new(line.OnHand, line.Price));
}
