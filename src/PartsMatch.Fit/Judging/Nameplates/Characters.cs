using System.Buffers;

namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>What a character is on a plate.</summary>
internal static class Characters
{
    /// <summary>A sign that parts what stands beside it; the gaps between tokens are made of these and of spaces.</summary>
    public static bool IsSeparator(char character) => ",;|¦:=()[]{}/\\-–—.+&#*_@!?<>•·…".Contains(character, StringComparison.Ordinal);

    /// <summary>A separator that parts two statements, as a space does; a slash or a dash may stand inside one.</summary>
    public static bool Divides(char character) => character is ',' or ';' or '|' or '¦' or ':' or '=' or '(' or ')' or '[' or ']' or '{' or '}' or '•' or '…';

    /// <summary>Quotes are inches behind a figure, and nothing anywhere else.</summary>
    public static bool IsQuote(char character) => character is '"' or '\'' or '″' or '”' or '“' or '‘' or '’' or '«' or '»';

    /// <summary>A digit, or a fraction in one character.</summary>
    public static bool IsFigure(char character) => char.IsAsciiDigit(character) || Quantities.VulgarFractions.Contains(character);

    /// <summary>What people type where a digit cannot be read.</summary>
    public static bool IsHole(char character) => character is '_' or '?' or '*' or '#' or '…';

    /// <summary>The letters that <see cref="DigitLike"/> knows.</summary>
    public static readonly SearchValues<char> DigitLikes = SearchValues.Create("OoIilSsBb");

    /// <summary>The digit that a letter is typed for or scanned as; null for all others. A capital L is none: nobody mistakes it for a 1.</summary>
    public static char? DigitLike(char character) => character switch
    {
        'O' or 'o' => '0',
        'I' or 'i' or 'l' => '1',
        'S' or 's' => '5',
        'B' or 'b' => '8',
        _ => null,
    };

    /// <summary>Whether a bar stands for a slash: it touches one digit on either side, 1|4.</summary>
    public static bool IsBarStroke(string text, int at) => text[at] is '|' or '¦' && IsBetweenSingles(text, at);

    /// <summary>Whether a letter or bar that is drawn as a stroke touches one digit on either side: 1I4, but not 1l40.</summary>
    public static bool IsSlashStroke(string text, int at) => text[at] is 'I' or 'i' or 'l' or '|' or '¦' && IsBetweenSingles(text, at);

    /// <summary>Whether one digit and no more stands on either side of a character.</summary>
    private static bool IsBetweenSingles(string text, int at)
    {
        return IsSingle(at - 1, at - 2) && IsSingle(at + 1, at + 2);

        bool IsSingle(int digit, int beyond) => digit >= 0 && digit < text.Length && char.IsAsciiDigit(text[digit])
            && (beyond < 0 || beyond >= text.Length || !(char.IsAsciiDigit(text[beyond]) || text[beyond] is '|' or '¦' or ',' || JoinsFigures(text[beyond])));
    }

    /// <summary>What may stand inside a run of figures: 115/208-230, 45+5, 2.1. A comma may not: it parts 1075,60HZ as often as it is a decimal one.</summary>
    public static bool JoinsFigures(char character) => character is '/' or '-' or '–' or '+' or '&' or '.';

    /// <summary>Whether a character, upper case, can be part of a word of the vocabulary.</summary>
    public static bool SpellsWords(char character) => char.IsLetterOrDigit(character) || character is '~' or '°' or '%' or '±';
}
