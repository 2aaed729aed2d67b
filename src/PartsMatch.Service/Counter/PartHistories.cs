using PartsMatch.Store;

namespace PartsMatch.Service.Counter;

/// <summary>One entry of a part's history: who did what when, and what is said otherwise since.</summary>
public sealed record PartEdit(PartChange Change, IReadOnlyList<ChangedText> Changed);

/// <summary>What was done to parts.</summary>
internal sealed class PartHistories(PartStore store)
{
    /// <summary>The newest first. What a part began with is not repeated.</summary>
    public async Task<IReadOnlyList<PartEdit>> OfAsync(CatalogueEntry part) =>
        [.. (await store.HistoryAsync(part.Stored.Number)).Reverse().Select(change => new PartEdit(
            change,
            change.Before is { } before ? PartTexts.Between(PartTexts.Of(part.Family, before), PartTexts.Of(part.Family, change.After)) : []))];
}
