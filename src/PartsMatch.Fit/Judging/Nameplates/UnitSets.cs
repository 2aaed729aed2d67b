namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>All sets of units that a plate is asked for, so that one look tells of all of them what a text spells.</summary>
internal sealed class UnitSets
{
    private static readonly List<UnitSet> None = [];

    private readonly List<UnitSet> sets = [];
    private readonly Dictionary<string, List<UnitSet>>.AlternateLookup<ReadOnlySpan<char>> bySpelling = new Dictionary<string, List<UnitSet>>(StringComparer.OrdinalIgnoreCase).GetAlternateLookup<ReadOnlySpan<char>>();
    private int longest;

    /// <summary>The set of some spellings, made where it is new.</summary>
    public UnitSet Of(IEnumerable<string> spellings)
    {
        var set = new UnitSet(spellings);
        if (sets.Find(set.IsLike) is { } known) return known;
        sets.Add(set);
        foreach (var spelling in set.Spellings)
        {
            if (!bySpelling.TryGetValue(spelling, out var spelt)) bySpelling[spelling] = spelt = [];
            spelt.Add(set);
            longest = Math.Max(longest, spelling.Length);
        }

        return set;
    }

    /// <summary>The sets that have a unit which a text spells.</summary>
    public List<UnitSet> Spelt(ReadOnlySpan<char> text) => text.Length <= longest && bySpelling.TryGetValue(text, out var spelt) ? spelt : None;
}
