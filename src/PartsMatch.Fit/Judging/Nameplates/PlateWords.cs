namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>The words of the vocabulary on a plate, by the tokens that they begin with and by those behind them.</summary>
internal sealed class PlateWords
{
    private static readonly List<Match> NoneHere = [];
    private static readonly List<(int From, Match Word)> NoneEnding = [];

    private readonly List<Match>[] beginning;
    private readonly List<(int From, Match Word)>?[] ending;

    /// <summary>Keeps the words that begin with each token of a plate.</summary>
    public PlateWords(int count, Func<int, List<Match>> beginningAt)
    {
        (beginning, ending) = (new List<Match>[count], new List<(int, Match)>?[count + 1]);
        for (var from = 0; from < count; from++)
        {
            beginning[from] = beginningAt(from);
            foreach (var match in beginning[from]) (ending[match.End] ??= new(1)).Add((from, match));
        }
    }

    /// <summary>Those that begin with a token, the shortest first; none behind the last.</summary>
    public List<Match> this[int at] => at < beginning.Length ? beginning[at] : NoneHere;

    /// <summary>Those that end right before a token, the longest first, with the tokens that they begin with.</summary>
    public List<(int From, Match Word)> Ending(int at) => ending[at] ?? NoneEnding;

    /// <summary>Whether a word that begins with a token ends in a shorter label of a field: HIGH PRESSURE CUT-OUT in CUT-OUT.</summary>
    public bool EndsInLabel(int from, Match word, Field field)
    {
        foreach (var (last, label) in Ending(word.End))
        {
            if (last > from && label.Announces(field)) return true;
        }

        return false;
    }

    /// <summary>The longest label of a field that begins with a token; null when none does.</summary>
    public Match? LongestLabel(int at, Field field)
    {
        var here = this[at];
        for (var last = here.Count - 1; last >= 0; last--)
        {
            if (here[last].Announces(field)) return here[last];
        }

        return null;
    }

    /// <summary>The longest word of some kind that begins with a token; null when none does.</summary>
    public Match? Longest(int at, Func<WordNode, bool> isOfKind)
    {
        var here = this[at];
        for (var last = here.Count - 1; last >= 0; last--)
        {
            if (isOfKind(here[last].Node)) return here[last];
        }

        return null;
    }
}
