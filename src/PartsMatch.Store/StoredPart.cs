namespace PartsMatch.Store;

/// <summary>One field of a spec, as text: the store knows no spec types, so that a new field needs nothing here.</summary>
public sealed record NamedText(string Name, string Text);

/// <summary>May the part still be bought, and may it still be offered?</summary>
public enum PartStatus
{
    /// <summary>The maker makes it.</summary>
    Current,

    /// <summary>The maker no longer makes it; it may still be on a shelf.</summary>
    Discontinued,

    /// <summary>Taken out of the catalogue: its number resolves, but it is never offered.</summary>
    Retired,
}

/// <summary>This part was replaced by <paramref name="Number"/>: who says so, and since when.</summary>
public sealed record Supersession(string Number, string SaidBy, DateOnly On);

/// <summary>What a writer gives: a part before the store has given it a version.</summary>
public sealed record PartDraft(
    string Number,
    string Kind,
    string Maker,
    string Title,
    PartStatus Status,
    IReadOnlyList<NamedText> Spec,
    IReadOnlyList<Supersession> SupersededBy);

/// <summary>A catalogue entry. The spec keeps its writer's order; the version starts at 1 and grows by 1 with every write.</summary>
public sealed record StoredPart(
    string Number,
    string Kind,
    string Maker,
    string Title,
    PartStatus Status,
    int Version,
    IReadOnlyList<NamedText> Spec,
    IReadOnlyList<Supersession> SupersededBy)
{
    /// <summary>Lists are copied: what the writer does to its own afterwards must not reach a snapshot.</summary>
    public static StoredPart From(PartDraft draft, int version) => new(
        draft.Number, draft.Kind, draft.Maker, draft.Title, draft.Status, version, [.. draft.Spec], [.. draft.SupersededBy]);
}

/// <summary>Price and counter quantity. They change hourly and do not make a part fit, so they are records of their own. Null is unknown.</summary>
public sealed record StockLine(string Number, decimal? Price, string Currency, int? OnHand);

/// <summary>An access key as the store keeps it: never the key, only a hash that the caller made.</summary>
public sealed record AccessKey(string Label, string Hash, string? Salt, DateTimeOffset MadeAt);

/// <summary>What a new store begins with. <paramref name="Source"/> ("the demo catalogue") is named in each part's history.</summary>
public sealed record SeedData(string Source, IReadOnlyList<PartDraft> Parts, IReadOnlyList<StockLine> Stock)
{
    /// <summary>What became of parts that were put in, in the order in which it is to be recorded.</summary>
    public IReadOnlyList<OutcomeDraft> Outcomes { get; init; } = [];
}
