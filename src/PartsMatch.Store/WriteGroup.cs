using System.Collections.Immutable;

namespace PartsMatch.Store;

/// <summary>Several writes that reach the disk together. Each is judged against what the ones before it leave; none knows of files.</summary>
internal sealed class WriteGroup(CatalogueSnapshot before, DateTimeOffset at, OutcomeCollection outcomes)
{
    private readonly ImmutableDictionary<string, StoredPart>.Builder _parts = before.WrittenByKey.ToBuilder();
    private readonly ImmutableDictionary<string, StockLine>.Builder _stock = before.SaidByKey.ToBuilder();
    private readonly ImmutableDictionary<string, AccessKey>.Builder _keys = before.KeysByLabel.ToBuilder();
    private readonly List<PartChange> _changes = [];
    private readonly Dictionary<string, StockLine> _stockLines = [];
    private readonly List<AccessKey> _newKeys = [];
    private int _count = before.Count;

    public IReadOnlyList<PartChange> Changes => _changes;

    public IReadOnlyCollection<StockLine> StockLines => _stockLines.Values;

    public IReadOnlyList<AccessKey> NewKeys => _newKeys;

    /// <summary>The parts as they are at the end, each once.</summary>
    public IReadOnlyList<StoredPart> Parts => [.. _changes.Select(change => PartNumber.Key(change.Number)).Distinct().Select(key => _parts[key])];

    private long LastSequence => before.Sequence + _changes.Count;

    /// <summary>What was recorded of parts that were put in: it is no part of the catalogue.</summary>
    public OutcomeGroup Outcomes { get; } = new(outcomes, at);

    /// <summary>Whether it leaves the catalogue as it is.</summary>
    public bool LeavesCatalogue => _changes.Count == 0 && _stockLines.Count == 0 && _newKeys.Count == 0;

    public bool IsEmpty => LeavesCatalogue && Outcomes.Records.Count == 0;

    public CatalogueSnapshot After => before.After(new(before.Revision + 1, LastSequence, _count), _parts.ToImmutable(), _stock.ToImmutable(), _keys.ToImmutable());

    public WriteResult Add(PartDraft draft, string by, PartChangeKind what = PartChangeKind.Added)
    {
        if (PartNumber.Complaint(draft.Number) is { } why)
            return new WriteResult.BadNumber(why);
        if (Find(draft.Number) is { } present)
            return new WriteResult.AlreadyThere(present);
        return Keep(null, StoredPart.From(draft, version: 1), by, what);
    }

    public WriteResult Change(string number, int versionRead, PartDraft draft, string by)
    {
        if (Find(number) is not { } present)
            return new WriteResult.NotThere(number);
        if (PartNumber.Complaint(draft.Number) is { } why)
            return new WriteResult.BadNumber(why);
        if (PartNumber.Key(draft.Number) != PartNumber.Key(number))
            return new WriteResult.BadNumber($"{present.Number} cannot become {draft.Number}. Add {draft.Number}, and let it supersede {present.Number}.");
        if (present.Version != versionRead)
            return new WriteResult.Conflict(present);
        var retires = draft.Status == PartStatus.Retired && present.Status != PartStatus.Retired;
        return Keep(present, StoredPart.From(draft, present.Version + 1), by, retires ? PartChangeKind.Retired : PartChangeKind.Changed);
    }

    public WriteResult Retire(string number, int versionRead, string by)
    {
        if (Find(number) is not { } present)
            return new WriteResult.NotThere(number);
        if (present.Status == PartStatus.Retired)
            return new WriteResult.AlreadyRetired(present);
        if (present.Version != versionRead)
            return new WriteResult.Conflict(present);
        return Keep(present, present with { Status = PartStatus.Retired, Version = present.Version + 1 }, by, PartChangeKind.Retired);
    }

    /// <summary>The last line said stands: a counter's quantity is a reading, not something two people edit.</summary>
    public WriteResult SetStock(StockLine line)
    {
        if (Find(line.Number) is not { } part)
            return new WriteResult.NotThere(line.Number);
        var key = PartNumber.Key(line.Number);
        _stock[key] = _stockLines[key] = line with { Number = part.Number };
        return new WriteResult.Written(part);
    }

    /// <summary>False when the label is taken.</summary>
    public bool AddKey(AccessKey key)
    {
        if (!_keys.TryAdd(key.Label, key))
            return false;
        _newKeys.Add(key);
        return true;
    }

    private StoredPart? Find(string number) => _parts.GetValueOrDefault(PartNumber.Key(number)) ?? before.Find(number);

    private WriteResult.Written Keep(StoredPart? present, StoredPart after, string by, PartChangeKind what)
    {
        if (present is null) _count++;
        _parts[PartNumber.Key(after.Number)] = after;
        _changes.Add(new PartChange(LastSequence + 1, at, by, what, present, after));
        return new WriteResult.Written(after);
    }
}
