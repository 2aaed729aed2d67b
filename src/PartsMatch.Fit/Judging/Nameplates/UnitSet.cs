namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Spellings of units, in any case of letters.</summary>
internal sealed class UnitSet
{
    private readonly HashSet<string>.AlternateLookup<ReadOnlySpan<char>> spellings;
    private readonly int longest;

    /// <summary>Keeps spellings.</summary>
    public UnitSet(IEnumerable<string> spellings)
    {
        var set = new HashSet<string>(spellings, StringComparer.OrdinalIgnoreCase);
        longest = set.Select(spelling => spelling.Length).DefaultIfEmpty(0).Max();
        this.spellings = set.GetAlternateLookup<ReadOnlySpan<char>>();
    }

    /// <summary>Whether there is none.</summary>
    public bool IsEmpty => longest == 0;

    /// <summary>Whether a text spells one.</summary>
    public bool Contains(ReadOnlySpan<char> text) => text.Length <= longest && spellings.Contains(text);
}
