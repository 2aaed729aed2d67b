namespace PartsMatch.Store;

/// <summary>A catalogue says few things many times over: 100,000 motors hold some two million texts, and a few thousand different ones. Each is kept once.</summary>
internal sealed class SharedTexts
{
    private readonly HashSet<NamedText> _said = [];
    private readonly HashSet<string> _words = new(StringComparer.Ordinal);

    public NamedText Of(string name, string text)
    {
        var said = new NamedText(name, text);
        if (_said.TryGetValue(said, out var kept)) return kept;
        var shared = new NamedText(Of(name), text);
        _said.Add(shared);
        return shared;
    }

    /// <summary>A word that many parts share, such as a maker.</summary>
    public string Of(string word)
    {
        if (_words.TryGetValue(word, out var kept)) return kept;
        _words.Add(word);
        return word;
    }
}
