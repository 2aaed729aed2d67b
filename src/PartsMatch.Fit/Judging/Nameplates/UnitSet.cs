namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Spellings of units, in any case of letters.</summary>
internal sealed class UnitSet(IEnumerable<string> spellings)
{
    private readonly HashSet<string> all = new(spellings, StringComparer.OrdinalIgnoreCase);

    /// <summary>The spellings.</summary>
    public IReadOnlyCollection<string> Spellings => all;

    /// <summary>Whether there is none.</summary>
    public bool IsEmpty => all.Count == 0;

    /// <summary>Whether a text spells one.</summary>
    public bool Contains(string text) => all.Contains(text);

    /// <summary>Whether it has the same spellings as another.</summary>
    public bool IsLike(UnitSet other) => all.SetEquals(other.all);
}
