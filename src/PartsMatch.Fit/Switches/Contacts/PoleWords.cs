namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>A number of poles in a sentence; formed only when the sentence is shown.</summary>
/// <param name="Count">How many.</param>
internal readonly record struct PoleWords(int Count)
{
    /// <summary>1 pole, 2 poles.</summary>
    public override string ToString() => Count == 1 ? "1 pole" : FormattableString.Invariant($"{Count} poles");
}
