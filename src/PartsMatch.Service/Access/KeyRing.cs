using PartsMatch.Store;

namespace PartsMatch.Service.Access;

/// <summary>The keys that open this service.</summary>
internal sealed class KeyRing(PartStore store, TimeProvider clock)
{
    public const string FirstLabel = "first";

    /// <summary>The first key, which only the caller will ever see; null when there are keys already.</summary>
    public async Task<string?> MakeFirstAsync()
    {
        if (store.Keys.Count > 0) return null;
        var (key, kept) = KeyHash.Make(FirstLabel, clock.GetUtcNow());
        return await store.AddKeyAsync(kept) ? key : null;
    }

    /// <summary>The mark of the key of a label; null when there is none.</summary>
    public string? MarkOf(string label) => store.Keys.FirstOrDefault(kept => kept.Label == label) is { } kept ? KeyHash.MarkOf(kept) : null;

    /// <summary>The label of the key; null when it is none of ours. Every kept key is tried, whichever matches.</summary>
    public string? LabelOf(string given)
    {
        string? label = null;
        foreach (var kept in store.Keys)
        {
            if (KeyHash.Matches(given, kept)) label = kept.Label;
        }

        return label;
    }
}
