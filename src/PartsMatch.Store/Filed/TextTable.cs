namespace PartsMatch.Store.Filed;

/// <summary>A catalogue says few things many times over: a million motors hold some twenty million texts, and some ten thousand different ones. Each is kept once and known by a number.</summary>
internal sealed class TextTable
{
    private readonly Dictionary<NamedText, int> _codes = [];
    private readonly List<NamedText> _named = [];
    private readonly Dictionary<string, int> _wordCodes = new(StringComparer.Ordinal);
    private readonly List<string> _words = [];

    public NamedText Named(int code) => _named[code];

    public string Word(int code) => _words[code];

    /// <summary>The number of a word, such as a maker; null when no part says it.</summary>
    public int? Find(string word) => _wordCodes.TryGetValue(word, out var code) ? code : null;

    public int CodeOf(string word)
    {
        if (_wordCodes.TryGetValue(word, out var known)) return known;
        _words.Add(word);
        return _wordCodes[word] = _words.Count - 1;
    }

    public int CodeOf(NamedText text)
    {
        if (_codes.TryGetValue(text, out var known)) return known;
        _named.Add(text);
        return _codes[text] = _named.Count - 1;
    }

    public void Write(BinaryWriter to)
    {
        // Names are words too, and are kept once like all others.
        List<(int Name, string Text)> named = [.. _named.Select(text => (CodeOf(text.Name), text.Text))];
        to.Write7BitEncodedInt(_words.Count);
        foreach (var word in _words) to.Write(word);
        to.Write7BitEncodedInt(named.Count);
        foreach (var (name, text) in named)
        {
            to.Write7BitEncodedInt(name);
            to.Write(text);
        }
    }

    public static TextTable Read(BinaryReader from)
    {
        var table = new TextTable();
        for (var left = from.Read7BitEncodedInt(); left > 0; left--) table.CodeOf(from.ReadString());
        for (var left = from.Read7BitEncodedInt(); left > 0; left--) table._named.Add(new(table._words[from.Read7BitEncodedInt()], from.ReadString()));
        return table;
    }
}
