namespace PartsMatch.Ranking;

/// <summary>How large a snapshot is.</summary>
/// <param name="Sorted">Sorted rows.</param>
/// <param name="Tail">Rows that came since.</param>
/// <param name="RowBytes">Bytes held for the sorted rows: codes, order and marks, without numbers, stock and facets.</param>
/// <param name="Facets">Distinct facets of every aspect, in the family's order.</param>
public sealed record CatalogueFigures(int Sorted, int Tail, long RowBytes, IReadOnlyList<int> Facets);
