namespace PartsMatch.Store;

/// <summary>One group of writes: the catalogue after it, and what in it is new, each part and line once.</summary>
public sealed class CatalogueChangedEventArgs(CatalogueSnapshot after, IReadOnlyList<StoredPart> parts, IReadOnlyCollection<StockLine> stock) : EventArgs
{
    public CatalogueSnapshot After { get; } = after;

    public IReadOnlyList<StoredPart> Parts { get; } = parts;

    public IReadOnlyCollection<StockLine> Stock { get; } = stock;
}
