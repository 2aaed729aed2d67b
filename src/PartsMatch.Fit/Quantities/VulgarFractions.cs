using System.Text;

namespace PartsMatch.Fit.Quantities;

/// <summary>Fractions of one character, which a phone's keyboard makes of 1/4 by itself.</summary>
internal static class VulgarFractions
{
    /// <summary>Each as a fraction, and as decimals where those are exact.</summary>
    private static readonly Dictionary<char, (string Fraction, string? Decimals)> All = new()
    {
        ['½'] = ("1/2", ".5"),
        ['¼'] = ("1/4", ".25"),
        ['¾'] = ("3/4", ".75"),
        ['⅛'] = ("1/8", ".125"),
        ['⅜'] = ("3/8", ".375"),
        ['⅝'] = ("5/8", ".625"),
        ['⅞'] = ("7/8", ".875"),
        ['⅕'] = ("1/5", ".2"),
        ['⅒'] = ("1/10", ".1"),
        ['⅓'] = ("1/3", null),
        ['⅔'] = ("2/3", null),
        ['⅙'] = ("1/6", null),
    };

    /// <summary>Whether a character is one of them.</summary>
    public static bool Contains(char character) => character > '\u007f' && All.ContainsKey(character);

    /// <summary>A text with its fractions spelt out: 1½ is 1-1/2, or 1.5 where a slash would part two figures. Null when that cannot be done exactly: ⅓ A.</summary>
    public static string? SpeltOut(string text, bool takesFractions)
    {
        if (Ascii.IsValid(text)) return text;
        var written = text;
        foreach (var character in text.Where(Contains))
        {
            var (fraction, decimals) = All[character];
            if (!takesFractions && decimals is null) return null;
            var at = written.IndexOf(character, StringComparison.Ordinal);
            var joiner = takesFractions && at > 0 && char.IsAsciiDigit(written[at - 1]) ? "-" : string.Empty;
            written = $"{written[..at]}{joiner}{(takesFractions ? fraction : decimals)}{written[(at + 1)..]}";
        }

        return written;
    }
}
