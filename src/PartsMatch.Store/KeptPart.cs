namespace PartsMatch.Store;

/// <summary>A part with what is said of its price and quantity; null when nothing ever was.</summary>
public sealed record KeptPart(StoredPart Part, StockLine? Stock);
