namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>What a character is on a plate.</summary>
internal static class Characters
{
    /// <summary>Fractions that a phone's keyboard makes of 1/4 by itself, and their decimals where those are exact.</summary>
    private static readonly Dictionary<char, (string Fraction, string? Decimals)> Vulgar = new()
    {
        ['½'] = ("1/2", ".5"), ['¼'] = ("1/4", ".25"), ['¾'] = ("3/4", ".75"), ['⅛'] = ("1/8", ".125"), ['⅜'] = ("3/8", ".375"), ['⅝'] = ("5/8", ".625"), ['⅞'] = ("7/8", ".875"),
        ['⅕'] = ("1/5", ".2"), ['⅒'] = ("1/10", ".1"), ['⅓'] = ("1/3", null), ['⅔'] = ("2/3", null), ['⅙'] = ("1/6", null),
    };

    /// <summary>A sign that parts what stands beside it; the gaps between tokens are made of these and of spaces.</summary>
    public static bool IsSeparator(char character) => ",;|¦:=()[]{}/\\-–—.+&#*_@!?<>•·…".Contains(character, StringComparison.Ordinal);

    /// <summary>A separator that parts two statements, as a space does; a slash or a dash may stand inside one.</summary>
    public static bool Divides(char character) => character is ',' or ';' or '|' or '¦' or ':' or '=' or '(' or ')' or '[' or ']' or '{' or '}' or '•' or '…';

    /// <summary>Quotes are inches behind a figure, and nothing anywhere else.</summary>
    public static bool IsQuote(char character) => character is '"' or '\'' or '″' or '”' or '“' or '‘' or '’' or '«' or '»';

    /// <summary>A digit, or a fraction in one character.</summary>
    public static bool IsFigure(char character) => char.IsAsciiDigit(character) || Vulgar.ContainsKey(character);

    /// <summary>What may stand inside a run of figures: 115/208-230, 45+5, 2.1. A comma may not: it parts 1075,60HZ as often as it is a decimal one.</summary>
    public static bool JoinsFigures(char character) => character is '/' or '-' or '–' or '+' or '&' or '.';

    /// <summary>Whether a character, upper case, can be part of a word of the vocabulary.</summary>
    public static bool SpellsWords(char character) => char.IsLetterOrDigit(character) || character is '~' or '°' or '%' or '±';

    /// <summary>Writes fractions of one character out: 1½ becomes 1-1/2, or 1.5 where a slash would part two figures. What has no decimals stays as it is, and is not read.</summary>
    public static string WriteOut(ReadOnlySpan<char> text, bool asFractions)
    {
        var written = text.ToString();
        foreach (var (character, (fraction, decimals)) in Vulgar)
        {
            for (var at = written.IndexOf(character, StringComparison.Ordinal); at >= 0 && (asFractions || decimals is not null); at = written.IndexOf(character, StringComparison.Ordinal))
            {
                var joiner = asFractions && at > 0 && char.IsAsciiDigit(written[at - 1]) ? "-" : string.Empty;
                written = $"{written[..at]}{joiner}{(asFractions ? fraction : decimals)}{written[(at + 1)..]}";
            }
        }

        return written;
    }
}
