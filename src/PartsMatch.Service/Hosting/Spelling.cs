namespace PartsMatch.Service.Hosting;

/// <summary>Which of some names was meant by one that is none of them.</summary>
internal static class Spelling
{
    private const int MostNamed = 3;

    /// <summary>The nearest names: those of the fewest slips, if these are few, else those that end in the same word.</summary>
    public static IReadOnlyList<string> Nearest(string given, IEnumerable<string> names)
    {
        var all = names.ToList();
        var most = Math.Max(2, given.Length / 3);
        var fewest = all.GroupBy(name => Distance(name, given, most)).MinBy(group => group.Key);
        if (fewest is not null && fewest.Key <= most) return [.. fewest.Take(MostNamed)];
        var word = given[(given.LastIndexOf(':') + 1)..];
        return [.. all.Where(name => word.Length > 2 && name.EndsWith(word, StringComparison.OrdinalIgnoreCase)).Take(MostNamed)];
    }

    /// <summary>How many letters must be put in, taken out or exchanged (Levenshtein), case aside; more than <paramref name="most"/> is not counted out.</summary>
    public static int Distance(string one, string other, int most)
    {
        if (Math.Abs(one.Length - other.Length) > most) return most + 1;
        var above = Enumerable.Range(0, other.Length + 1).ToArray();
        foreach (var (row, letter) in one.Index())
        {
            var here = new int[above.Length];
            here[0] = row + 1;
            for (var at = 1; at < here.Length; at++)
            {
                var exchanged = above[at - 1] + (char.ToUpperInvariant(letter) == char.ToUpperInvariant(other[at - 1]) ? 0 : 1);
                here[at] = Math.Min(exchanged, Math.Min(above[at], here[at - 1]) + 1);
            }

            above = here;
        }

        return above[^1];
    }
}
