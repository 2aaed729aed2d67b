using System.Collections.Immutable;
using PartsMatch.Store.Filed;

namespace PartsMatch.Store;

/// <summary>The catalogue as it was after one group of writes, for good: parts, stock and revision belong together.</summary>
/// <remarks>Most of it lies in a file; what was written since that was made is in memory, and goes before it.</remarks>
public sealed class CatalogueSnapshot
{
    internal static readonly CatalogueSnapshot Empty = Of(PartsFile.None, revision: 0, ImmutableDictionary<string, AccessKey>.Empty);

    private readonly PartsFile _file;
    private readonly Lazy<IReadOnlyList<string>> _writtenKeys;

    private CatalogueSnapshot(
        PartsFile file,
        PartsFileContents contents,
        ImmutableDictionary<string, StoredPart> writtenByKey,
        ImmutableDictionary<string, StockLine> saidByKey,
        ImmutableDictionary<string, AccessKey> keysByLabel)
    {
        (_file, Contents, WrittenByKey, SaidByKey, KeysByLabel) = (file, contents, writtenByKey, saidByKey, keysByLabel);
        // Sorted when first asked for: many groups of writes pass that nobody looks at.
        _writtenKeys = new(() => [.. writtenByKey.Keys.Order(StringComparer.Ordinal)]);
    }

    /// <summary>Grows by 1 with every group of writes, also from one start of the process to the next.</summary>
    public long Revision => Contents.Revision;

    /// <summary>The number of the last entry in the record of changes; 0 when there is none.</summary>
    public long Sequence => Contents.Sequence;

    /// <summary>How many parts there are, retired ones too.</summary>
    public int Count => Contents.Count;

    /// <summary>The same for snapshots of the same parts and stock, also in another process; null when some of it is not in the file yet.</summary>
    public long? Digest => Unfiled == 0 ? _file.Digest : null;

    /// <summary>Every part, retired ones too, in the order of their numbers' keys.</summary>
    public IEnumerable<StoredPart> Parts => Kept().Select(kept => kept.Part);

    public IEnumerable<StockLine> AllStock => Kept().Select(kept => kept.Stock).OfType<StockLine>();

    public IReadOnlyCollection<AccessKey> Keys => [.. KeysByLabel.Values.OrderBy(key => key.MadeAt)];

    internal PartsFileContents Contents { get; }

    /// <summary>The parts written since the file was made.</summary>
    internal ImmutableDictionary<string, StoredPart> WrittenByKey { get; }

    /// <summary>The stock lines said since the file was made.</summary>
    internal ImmutableDictionary<string, StockLine> SaidByKey { get; }

    internal ImmutableDictionary<string, AccessKey> KeysByLabel { get; }

    /// <summary>How much is not in the file.</summary>
    internal int Unfiled => WrittenByKey.Count + SaidByKey.Count;

    /// <summary>So much that it would better be in a file: it takes memory, and the next start has to wait for it.</summary>
    internal bool WantsFiling => Unfiled > Math.Max(10_000, _file.Contents.Count / 4);

    /// <summary>The part of a number with its stock; null when there is none.</summary>
    public KeptPart? FindKept(string number)
    {
        var key = PartNumber.Key(number);
        var written = WrittenByKey.GetValueOrDefault(key);
        var said = SaidByKey.GetValueOrDefault(key);
        if (written is not null && said is not null) return new(written, said);
        var filed = _file.Find(key);
        return (written ?? filed?.Part) is { } part ? new(part, said ?? filed?.Stock) : null;
    }

    public StoredPart? Find(string number) => FindKept(number)?.Part;

    /// <summary>Null when nothing was ever said about the part's price and quantity.</summary>
    public StockLine? Stock(string number) => FindKept(number)?.Stock;

    /// <summary>Parts in the order of their numbers' keys.</summary>
    /// <param name="kind">Of which kind; of all when null.</param>
    /// <param name="after">Those whose number's key comes after this one; all when null.</param>
    public IEnumerable<KeptPart> Kept(string? kind = null, string? after = null)
    {
        using var written = _writtenKeys.Value.Where(key => after is null || string.CompareOrdinal(key, after) > 0).GetEnumerator();
        var more = written.MoveNext();
        foreach (var (key, filed) in _file.Parts(kind, after))
        {
            for (; more && string.CompareOrdinal(written.Current, key) < 0; more = written.MoveNext())
            {
                if (Written(written.Current, kind) is { } part) yield return part;
            }

            // One that was written since comes by itself, with what the file says of its stock.
            if (!WrittenByKey.ContainsKey(key)) yield return SaidByKey.TryGetValue(key, out var said) ? filed with { Stock = said } : filed;
        }

        for (; more; more = written.MoveNext())
        {
            if (Written(written.Current, kind) is { } part) yield return part;
        }
    }

    /// <summary>The parts that a part replaced, by what is said of them, in the order of their numbers' keys.</summary>
    public IEnumerable<KeptPart> ReplacedBy(string number)
    {
        var key = PartNumber.Key(number);
        return _file.ReplacedBy(key).Where(replaced => !WrittenByKey.ContainsKey(replaced))
            .Concat(WrittenByKey.Where(one => one.Value.SupersededBy.Any(by => PartNumber.Key(by.Number) == key)).Select(one => one.Key))
            .Order(StringComparer.Ordinal).Select(replaced => FindKept(replaced)!);
    }

    /// <summary>What a file holds, at a revision at which keys may have been written since it was made.</summary>
    internal static CatalogueSnapshot Of(PartsFile file, long revision, ImmutableDictionary<string, AccessKey> keysByLabel) =>
        new(file, file.Contents with { Revision = revision }, ImmutableDictionary<string, StoredPart>.Empty, ImmutableDictionary<string, StockLine>.Empty, keysByLabel);

    /// <summary>The catalogue after a group of writes.</summary>
    internal CatalogueSnapshot After(
        PartsFileContents contents, ImmutableDictionary<string, StoredPart> writtenByKey, ImmutableDictionary<string, StockLine> saidByKey, ImmutableDictionary<string, AccessKey> keysByLabel) =>
        new(_file, contents, writtenByKey, saidByKey, keysByLabel);

    /// <summary>The same catalogue on a file that an earlier one, or this one, was written to.</summary>
    internal CatalogueSnapshot On(PartsFile file, CatalogueSnapshot filed) => new(
        file,
        Contents,
        WrittenByKey.RemoveRange(filed.WrittenByKey.Where(one => ReferenceEquals(WrittenByKey[one.Key], one.Value)).Select(one => one.Key)),
        SaidByKey.RemoveRange(filed.SaidByKey.Where(one => ReferenceEquals(SaidByKey[one.Key], one.Value)).Select(one => one.Key)),
        KeysByLabel);

    /// <summary>Once the store is closed, what is in its file can be read no more.</summary>
    internal void Close() => _file.Dispose();

    private KeptPart? Written(string key, string? kind) =>
        WrittenByKey[key] is var part && (kind is null || part.Kind == kind) ? new(part, SaidByKey.GetValueOrDefault(key) ?? _file.Find(key)?.Stock) : null;
}
