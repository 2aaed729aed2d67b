namespace PartsMatch.Store;

/// <summary>What was done to a part.</summary>
public enum PartChangeKind
{
    /// <summary>It came with the catalogue that the store was made with.</summary>
    Seeded,
    Added,
    Changed,
    Retired,
}

/// <summary>
/// One entry of the record of changes, which only ever grows. <paramref name="Sequence"/> counts from 1 over all parts in the
/// order of writing; <paramref name="By"/> is who wrote, as the caller named them, or the seed's source;
/// <paramref name="Before"/> is null for a part's first entry.
/// </summary>
public sealed record PartChange(
    long Sequence,
    DateTimeOffset At,
    string By,
    PartChangeKind What,
    StoredPart? Before,
    StoredPart After)
{
    public string Number => After.Number;

    public int Version => After.Version;
}
