using PartsMatch.Service.Counter;
using PartsMatch.Store;

namespace PartsMatch.Service.Pages.Needs;

/// <summary>A part's number as it is typed from a plate or a box: by itself, behind P/N or MODEL, among other words, or with a letter for a figure.</summary>
internal static class NumberInText
{
    /// <summary>A shorter one, such as 48Y, may be something else on a plate.</summary>
    private const int LeastCharacters = 5;

    /// <summary>A number written with spaces, as OSK 79 82W, has so many words at most.</summary>
    private const int MostWords = 4;

    /// <summary>A number in which so many characters were taken for others is looked for.</summary>
    private const int MostSlips = 2;

    private static readonly HashSet<string> Announcing = new(StringComparer.OrdinalIgnoreCase) { "MODEL", "MOD", "M/N", "MN", "P/N", "PN", "PART", "CAT", "NO", "NUMBER", "NR", "#" };

    /// <summary>What is read as one another on a worn plate, and on a phone.</summary>
    private static readonly string[] LookAlike = ["0OQD", "1IL", "2Z", "5S", "6G", "8B", "UV"];

    /// <summary>The part whose number a text is, or holds, and the rest of the text; null where it holds none, or those of several parts.</summary>
    public static (CatalogueEntry Old, string Others)? Find(Shelf shelf, string text)
    {
        if (shelf.Find(text) is { } whole) return (whole, string.Empty);
        var words = text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        List<(CatalogueEntry Old, int From, int To)> found = [];
        for (var from = 0; from < words.Length; from++)
        {
            for (var to = Math.Min(words.Length, from + MostWords); to > from; to--)
            {
                if (At(shelf, words, from, to) is not { } old) continue;
                found.Add((old, from, to));
                from = to - 1;
                break;
            }
        }

        if (found is not [var only, ..] || found.Exists(one => one.Old.Stored.Number != only.Old.Stored.Number)) return null;
        var rest = words.ToList();
        foreach (var (_, from, to) in Enumerable.Reverse(found))
        {
            var announced = from;
            while (announced > 0 && Announcing.Contains(words[announced - 1].TrimEnd(':', '.'))) announced--;
            rest.RemoveRange(announced, to - announced);
        }

        return (only.Old, string.Join(' ', rest));
    }

    /// <summary>The parts whose numbers a number may be, with up to two characters taken for others; in the order of their numbers.</summary>
    public static IReadOnlyList<CatalogueEntry> Alike(Shelf shelf, string number)
    {
        var key = PartNumber.Key(number);
        if (key.Length is < LeastCharacters or > PartNumber.MostCharacters) return [];
        HashSet<string> tried = [key];
        for (var slips = 0; slips < MostSlips; slips++) tried.UnionWith(tried.SelectMany(Slipped).ToList());
        return [.. tried.Select(shelf.Find).OfType<CatalogueEntry>().OrderBy(entry => entry.Stored.Number, StringComparer.Ordinal)];
    }

    private static CatalogueEntry? At(Shelf shelf, string[] words, int from, int to)
    {
        var number = string.Join(' ', words[from..to]).Trim(',', ';', ':', '.');
        var key = PartNumber.Key(number);
        return key.Length >= LeastCharacters && key.Any(char.IsDigit) && key.Any(char.IsLetter) ? shelf.Find(number) : null;
    }

    private static IEnumerable<string> Slipped(string key) =>
        from at in Enumerable.Range(0, key.Length)
        from alike in LookAlike.Where(alike => alike.Contains(key[at], StringComparison.Ordinal))
        from sign in alike
        where sign != key[at]
        select $"{key[..at]}{sign}{key[(at + 1)..]}";
}
