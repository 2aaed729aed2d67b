namespace PartsMatch.Fit.Quantities;

/// <summary>The trade's words for a choice: the first is how it is written; all are read, in any case of letters. Plates are read by them too.</summary>
/// <param name="written">How it is written.</param>
/// <param name="also">Other words and abbreviations for it.</param>
[AttributeUsage(AttributeTargets.Field)]
public sealed class WordsAttribute(string written, params string[] also) : Attribute
{
    /// <summary>How the choice is written.</summary>
    public string Written => written;

    /// <summary>Other words and abbreviations for it.</summary>
    public IReadOnlyList<string> Also => also;
}
