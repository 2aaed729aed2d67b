using System.Buffers.Text;
using System.Text;
using PartsMatch.Fit.Judging;
using PartsMatch.Store;

namespace PartsMatch.Service.Counter;

/// <summary>A page of the catalogue, in the order of part numbers.</summary>
public sealed record PartPage(IReadOnlyList<CatalogueEntry> Parts, bool HasNext, bool HasPrevious);

/// <summary>Leafs through the catalogue, retired parts left out.</summary>
internal static class PartLists
{
    public static Answer<PartPage> Page(Shelf shelf, Family? family, string? text, int first, string? after)
    {
        string? afterKey = null;
        if (after is not null && !TryRead(after, out afterKey)) return new Refusal(Codes.CursorMalformed, "after", "This is no cursor of a list of parts.");
        var words = (text ?? string.Empty).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        var found = shelf.Parts(family, afterKey)
            .Where(part => part.Stored.Status != PartStatus.Retired)
            .Where(part => Array.TrueForAll(words, word => Has(part.Stored, word)))
            .Take(first + 1)
            .ToList();
        return new PartPage([.. found.Take(first)], found.Count > first, afterKey is not null);
    }

    /// <summary>A cursor says after which number a page begins, so that one page follows another whatever is added between.</summary>
    public static string Cursor(CatalogueEntry part) => Base64Url.EncodeToString(Encoding.UTF8.GetBytes(PartNumber.Key(part.Stored.Number)));

    private static bool TryRead(string cursor, out string? key)
    {
        key = Base64Url.IsValid(cursor) ? Encoding.UTF8.GetString(Base64Url.DecodeFromChars(cursor)) : null;
        return key is { Length: > 0 } && PartNumber.Key(key).Equals(key, StringComparison.Ordinal);
    }

    private static bool Has(StoredPart part, string word) =>
        part.Title.Contains(word, StringComparison.OrdinalIgnoreCase)
        || part.Maker.Contains(word, StringComparison.OrdinalIgnoreCase)
        || (PartNumber.Key(word) is { Length: > 0 } key && PartNumber.Key(part.Number).Contains(key, StringComparison.Ordinal))
        || part.Spec.Any(text => text.Text.Contains(word, StringComparison.OrdinalIgnoreCase));
}
