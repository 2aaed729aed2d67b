using System.Collections.Immutable;

namespace PartsMatch.Store;

/// <summary>The catalogue as it was after one group of writes, for good: parts, stock and revision belong together.</summary>
public sealed class CatalogueSnapshot
{
    internal static readonly CatalogueSnapshot Empty = new(
        0, 0, ImmutableDictionary<string, StoredPart>.Empty, ImmutableDictionary<string, StockLine>.Empty, ImmutableDictionary<string, AccessKey>.Empty);

    private readonly Lazy<IReadOnlyList<StoredPart>> _parts;

    internal CatalogueSnapshot(
        long revision,
        long sequence,
        ImmutableDictionary<string, StoredPart> partsByKey,
        ImmutableDictionary<string, StockLine> stockByKey,
        ImmutableDictionary<string, AccessKey> keysByLabel)
    {
        Revision = revision;
        Sequence = sequence;
        PartsByKey = partsByKey;
        StockByKey = stockByKey;
        KeysByLabel = keysByLabel;
        // Sorted when first asked for: many groups of writes pass that nobody looks at.
        _parts = new(() => [.. partsByKey.OrderBy(entry => entry.Key, StringComparer.Ordinal).Select(entry => entry.Value)]);
    }

    /// <summary>Grows by 1 with every group of writes, also from one start of the process to the next.</summary>
    public long Revision { get; }

    /// <summary>The number of the last entry in the record of changes; 0 when there is none.</summary>
    public long Sequence { get; }

    /// <summary>Every part, retired ones too, in the order of their numbers' keys.</summary>
    public IReadOnlyList<StoredPart> Parts => _parts.Value;

    public IReadOnlyCollection<StockLine> AllStock => [.. StockByKey.Values];

    public IReadOnlyCollection<AccessKey> Keys => [.. KeysByLabel.Values.OrderBy(key => key.MadeAt)];

    internal ImmutableDictionary<string, StoredPart> PartsByKey { get; }

    internal ImmutableDictionary<string, StockLine> StockByKey { get; }

    internal ImmutableDictionary<string, AccessKey> KeysByLabel { get; }

    public StoredPart? Find(string number) => PartsByKey.GetValueOrDefault(PartNumber.Key(number));

    /// <summary>Null when nothing was ever said about the part's price and quantity.</summary>
    public StockLine? Stock(string number) => StockByKey.GetValueOrDefault(PartNumber.Key(number));
}
