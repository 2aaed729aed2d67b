namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>A label as the tree keeps it.</summary>
/// <param name="Label">What the vocabulary says of it.</param>
/// <param name="Field">Its field.</param>
/// <param name="Unit">The unit of a figure at it that has none: the label's own, when it is a unit.</param>
/// <param name="IsSymbol">Whether it is a unit's symbol, which is no abbreviation and has no stop: HP, A, KW.</param>
internal sealed record LabelEntry(PlateLabel Label, Field Field, string? Unit, bool IsSymbol)
{
    /// <summary>What it is read past.</summary>
    public IReadOnlyList<PassedKind> Past { get; init; } = [];
}

/// <summary>A kind of figure that a label is read past.</summary>
/// <param name="Units">Its units.</param>
/// <param name="Field">Its field; null where none of the family holds it.</param>
internal sealed record PassedKind(UnitSet Units, Field? Field);

/// <summary>A word that is a value.</summary>
/// <param name="Field">Its field.</param>
/// <param name="Value">The value as the field's form reads it.</param>
internal sealed record WordEntry(Field Field, string Value)
{
    /// <summary>The field behind whose labels and words it counts by itself; null where it counts anywhere.</summary>
    public Field? OnlyBehind { get; init; }

    /// <summary>The field beside whose label it does not count; null where it always does.</summary>
    public Field? NeverBeside { get; init; }

    /// <summary>The fields beside whose labels and words it does not count.</summary>
    public IReadOnlyList<Field> NeverNextTo { get; init; } = [];

    /// <summary>The values right behind which it does not count.</summary>
    public IReadOnlyList<(Field Field, object Value)> NeverBehind { get; init; } = [];
}

/// <summary>A mark of one of two connections.</summary>
/// <param name="Marks">What the vocabulary says of the two.</param>
/// <param name="Field">The field whose figures they tell apart.</param>
/// <param name="IsFirst">Whether it is the mark of the first.</param>
internal sealed record MarkEntry(PlateMarks Marks, Field Field, bool IsFirst);

/// <summary>Where a word of the vocabulary ends, or may go on.</summary>
internal sealed class WordNode
{
    private readonly List<WordNode> nodes = [];
    private string characters = string.Empty;

    /// <summary>The characters before which the word may be parted here: THERM PROT, THERM-PROT, THERMPROT; but not the 2 of the terminal V2, though V AC may be.</summary>
    public HashSet<char> BehindGap { get; } = [];

    /// <summary>The fields that the word ending here announces.</summary>
    public List<LabelEntry> Labels { get; } = [];

    /// <summary>The values that the word ending here has in the fields' forms.</summary>
    public List<WordEntry> Words { get; } = [];

    /// <summary>What the word ending here says without any label.</summary>
    public List<WordEntry> Free { get; } = [];

    /// <summary>Whether it announces what no field holds.</summary>
    public bool IsStranger { get; set; }

    /// <summary>Whether it does so before a number of a part only: VALVE NO 12345, but not VALVE NO 24 V.</summary>
    public bool IsNumbered { get; set; }

    /// <summary>The field that figures beside it look like, which are not its own, with what the vocabulary says of it; null for nearly all words.</summary>
    public LabelEntry? AlikeTo { get; set; }

    /// <summary>Whether it says nothing of any field.</summary>
    public bool IsFiller { get; set; }

    /// <summary>Whether it is what such a part is called; then it is a filler, too.</summary>
    public bool IsName { get; set; }

    /// <summary>Which of several steps it names, the highest first; null when none.</summary>
    public int? Step { get; set; }

    /// <summary>The marks of connections that it is.</summary>
    public List<MarkEntry> Marks { get; } = [];

    /// <summary>The node behind this one for a character; null when no word goes on with it.</summary>
    public WordNode? Next(char character) => characters.IndexOf(character, StringComparison.Ordinal) is >= 0 and var at ? nodes[at] : null;

    /// <summary>Lets words go on with a character.</summary>
    public WordNode Add(char character)
    {
        characters += character;
        nodes.Add(new());
        return nodes[^1];
    }

    /// <summary>Whether a word ends here.</summary>
    public bool Ends => IsStranger || IsNumbered || IsFiller || AlikeTo is not null || Step is not null || Labels.Count + Words.Count + Marks.Count > 0;
}

/// <summary>A word of the vocabulary found in a text.</summary>
/// <param name="End">The token behind it.</param>
/// <param name="Node">What it means.</param>
internal readonly record struct Match(int End, WordNode Node)
{
    /// <summary>Whether the word announces a field.</summary>
    public bool Announces(Field field)
    {
        foreach (var label in Node.Labels)
        {
            if (label.Field == field) return true;
        }

        return false;
    }

    /// <summary>Whether it is a value of a field.</summary>
    public bool IsValueOf(Field field)
    {
        foreach (var word in Node.Words)
        {
            if (word.Field == field) return true;
        }

        return false;
    }
}

/// <summary>The words of a vocabulary by their characters, so that the longest is found in one walk.</summary>
internal sealed class WordTree
{
    private static readonly List<Match> None = [];

    private readonly WordNode root = new();

    /// <summary>The node at which a word ends, made if it is new.</summary>
    public WordNode Add(string word)
    {
        var node = root;
        var parted = false;
        foreach (var character in word.ToUpperInvariant())
        {
            if (Characters.SpellsWords(character))
            {
                if (parted) node.BehindGap.Add(character);
                parted = false;
                node = node.Next(character) ?? node.Add(character);
            }
            else if (node != root)
            {
                parted = true;
            }
        }

        return node == root ? throw new InvalidOperationException($"“{word}” has no character that spells words.") : node;
    }

    /// <summary>Whether a text without gaps is a word.</summary>
    public bool Has(ReadOnlySpan<char> text)
    {
        var node = root;
        foreach (var character in text)
        {
            if (node.Next(char.ToUpperInvariant(character)) is not { } next) return false;
            node = next;
        }

        return node.Ends;
    }

    /// <summary>All words that begin with a token and end with one, the shortest first.</summary>
    public List<Match> At(PlateText plate, int from)
    {
        List<Match>? matches = null;
        var node = root;
        for (var at = from; at < plate.Count; at++)
        {
            var parted = at > from && !plate.Gap(at).IsEmpty;
            if (parted && !(plate.SameLine(at) && Gaps.InsideWord(plate.Gap(at)))) break;
            foreach (var character in plate.Slice(at, at + 1))
            {
                var upper = char.ToUpperInvariant(character);
                if (!Characters.SpellsWords(upper))
                {
                    if (node.BehindGap.Count == 0) return matches ?? None;
                    parted = true;
                    continue;
                }

                if ((parted && !node.BehindGap.Contains(upper)) || node.Next(upper) is not { } next) return matches ?? None;
                (node, parted) = (next, false);
            }

            if (node.Ends) (matches ??= new(1)).Add(new(at + 1, node));
        }

        return matches ?? None;
    }
}
