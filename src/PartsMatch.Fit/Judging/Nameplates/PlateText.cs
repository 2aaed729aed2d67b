namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>A plate's text, cut into tokens.</summary>
internal sealed class PlateText
{
    /// <summary>A plate typed without a single space or divider has fewer tokens; what runs on for longer is left over, for its ways of being read are many.</summary>
    private const int LongestChunk = 80;

    private readonly string plain;
    private readonly IReadOnlyList<Slip> slips;
    private readonly int[] chunkEnds;
    private readonly int[] chunkStarts;
    private readonly bool[] figures;

    /// <summary>Cuts a text, with some slips in it mended; it takes time in proportion to its length.</summary>
    public PlateText(string text, Lexicon lexicon, params IReadOnlyList<Slip> slips)
    {
        Text = text;
        this.slips = slips;
        plain = Slip.MendedIn(Quantities.PlainSigns.In(text), slips);
        Tokens = new TokenScan(plain, lexicon).All();
        chunkEnds = new int[Tokens.Length];
        chunkStarts = new int[Tokens.Length];
        for (var at = 0; at < Tokens.Length; at++) chunkStarts[at] = BeginsChunk(at) ? at : chunkStarts[at - 1];
        figures = new bool[Tokens.Length];
        for (var at = Tokens.Length - 1; at >= 0; at--)
        {
            var goesOn = at + 1 < Tokens.Length && Tokens[at + 1].Chunk == Tokens[at].Chunk;
            chunkEnds[at] = goesOn ? chunkEnds[at + 1] : at + 1;
            figures[at] = Tokens[at].Kind == TokenKind.Number || (goesOn && figures[at + 1]);
        }

        AllWords = new(Count, at => lexicon.Tree.At(this, at));
        Words = Enumerable.Range(0, Count).Any(RunsOn) ? new(Count, at => RunsOn(at) ? [] : AllWords[at]) : AllWords;
    }

    /// <summary>The text as given.</summary>
    public string Text { get; }

    /// <summary>Its tokens, in order.</summary>
    public Token[] Tokens { get; }

    /// <summary>The words of the vocabulary on it.</summary>
    public PlateWords AllWords { get; }

    /// <summary>The same without those in what runs on for longer than anything on a plate.</summary>
    public PlateWords Words { get; }

    /// <summary>How many tokens there are.</summary>
    public int Count => Tokens.Length;

    /// <summary>What stands before a token, up to the token before it.</summary>
    public ReadOnlySpan<char> Gap(int at) => at == 0 ? [] : plain.AsSpan(Tokens[at - 1].End, Tokens[at].From - Tokens[at - 1].End);

    /// <summary>What stands before a token, or behind the last one, without the spaces before it.</summary>
    public ReadOnlySpan<char> Behind(int at) => (at < Count ? Gap(at) : plain.AsSpan(Tokens[^1].End)).TrimStart();

    /// <summary>The text from one token to before another, with what stands before the first: /min.</summary>
    public ReadOnlySpan<char> WithGap(int from, int to) => plain.AsSpan(Tokens[from].From - Gap(from).Length, Tokens[to - 1].End - Tokens[from].From + Gap(from).Length).Trim();

    /// <summary>The text from one token to before another, in plain signs.</summary>
    public ReadOnlySpan<char> Slice(int from, int to) => plain.AsSpan(Tokens[from].From, Tokens[to - 1].End - Tokens[from].From);

    /// <summary>The same as a piece of the plate, as it was typed.</summary>
    public TextSpan Span(int from, int to)
    {
        var (start, end) = (Tokens[from].From, Tokens[to - 1].End);

        // The brackets of CCW (LE), (XQ) LISTED and (KEYED), and the last stop of T.P., belong to it.
        if (end < Text.Length && Opening(Text[end]) is { } opening && IsOpen(Text.AsSpan(start, end - start), opening, Text[end])) end++;
        else if (start > 0 && Closing(Text[start - 1]) is { } closing && Closes(Text.AsSpan(start, end - start), Text[start - 1], closing)) start--;
        else if (start > 0 && end < Text.Length && Closing(Text[start - 1]) == Text[end]) (start, end) = (start - 1, end + 1);
        else if (end < Text.Length && Text[end] == '.' && Text.AsSpan(start, end - start).Contains('.') && char.IsLetter(Text[end - 1])) end++;
        return new(Text[start..end], start, end - start);
    }

    /// <summary>What was mended within pieces of the plate.</summary>
    public IReadOnlyList<Mended> MendedIn(List<TextSpan> spans) => slips.Count == 0 ? [] :
    [
        .. (from span in spans
            from slip in slips
            let reach = slip.Within(plain, span)
            where reach.Length > 0
            select new Mended(Text.Substring(reach.From, reach.Length), plain.Substring(reach.From, reach.Length))).Distinct(),
    ];

    /// <summary>Whether a token is of a kind; false before the first and behind the last.</summary>
    public bool Is(int at, TokenKind kind) => at >= 0 && at < Count && Tokens[at].Kind == kind;

    /// <summary>Whether a token is a word, whatever its case.</summary>
    public bool IsWord(int at, string word) => Is(at, TokenKind.Word) && Slice(at, at + 1).Equals(word, StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether a token joins two sizes: 1/2 X 4.</summary>
    public bool IsBy(int at) => IsWord(at, "x") || IsWord(at, "by") || (Is(at, TokenKind.Sign) && Slice(at, at + 1) is "×");

    /// <summary>Whether a token begins its chunk.</summary>
    public bool BeginsChunk(int at) => at == 0 || Tokens[at - 1].Chunk != Tokens[at].Chunk;

    /// <summary>The token behind the last one of a token's chunk.</summary>
    public int ChunkEnd(int at) => chunkEnds[at];

    /// <summary>Whether a token's chunk runs on for longer than anything on a plate.</summary>
    public bool RunsOn(int at) => chunkEnds[at] - chunkStarts[at] > LongestChunk;

    /// <summary>Whether there is a number from a token to the end of its chunk.</summary>
    public bool HasFigures(int at) => figures[at];

    /// <summary>Whether nothing but a stop parts a figure from the letters before it: hp.25 may be a quarter, CL.155 is an abbreviation.</summary>
    public bool IsAtStop(int at) => Is(at - 1, TokenKind.Word) && Gap(at) is ".";

    /// <summary>Whether a figure is one digit with a stop behind it: the decimals of A 2. may be lost.</summary>
    public bool LosesDecimals(int from, int to) =>
        to == from + 1 && Tokens[from].Length == 1 && char.IsAsciiDigit(plain[Tokens[from].From]) && Tokens[from].End < plain.Length && plain[Tokens[from].End] == '.';

    /// <summary>Whether two tokens that follow each other stand on one line.</summary>
    public bool SameLine(int at) => at > 0 && Tokens[at - 1].Line == Tokens[at].Line;

    /// <summary>Whether tokens are all that stands on their line.</summary>
    public bool FillLine(int from, int to) => !SameLine(from) && (to == Count || !SameLine(to)) && Tokens[from].Line == Tokens[to - 1].Line;

    private static char? Opening(char closing) => closing switch { ')' => '(', ']' => '[', '}' => '{', _ => null };

    private static char? Closing(char opening) => opening switch { '(' => ')', '[' => ']', '{' => '}', _ => null };

    private static bool IsOpen(ReadOnlySpan<char> text, char opening, char closing) => text.LastIndexOf(opening) > text.LastIndexOf(closing);

    private static bool Closes(ReadOnlySpan<char> text, char opening, char closing) => text.IndexOf(closing) is >= 0 and var at && text[..at].IndexOf(opening) < 0;
}
