using System.Globalization;

namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Writes a plate's figures so that the fields' forms read them as they are meant.</summary>
internal static class FigureText
{
    /// <summary>Figures with commas between lie nearer together than this: 1075, 850 RPM.</summary>
    private const double WidestList = 2.5;

    /// <summary>Fractions of one character, and their decimals where those are exact.</summary>
    private static readonly Dictionary<char, (string Fraction, string? Decimals)> Vulgar = new()
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

    /// <summary>
    /// A text for a form: 1½ is 1-1/2, or 1.5 where a slash would part two figures, and 3/2 HP are three and two, not one and a half.
    /// Null when it could mean two things: 1-1/2 A.
    /// </summary>
    public static string? For(bool takesFractions, ReadOnlySpan<char> text)
    {
        var written = text.ToString();
        foreach (var (character, (fraction, decimals)) in Vulgar)
        {
            if (!written.Contains(character, StringComparison.Ordinal)) continue;
            if (!takesFractions && decimals is null) return null;
            var at = written.IndexOf(character, StringComparison.Ordinal);
            var joiner = takesFractions && at > 0 && char.IsAsciiDigit(written[at - 1]) ? "-" : string.Empty;
            written = $"{written[..at]}{joiner}{(takesFractions ? fraction : decimals)}{written[(at + 1)..]}";
        }

        if (Fraction(written) is not { } parts) return written;
        return takesFractions
            ? parts.Whole is null && parts.Above > parts.Below && parts.Below > 0 ? written.Replace("/", " / ", StringComparison.Ordinal) : written
            : parts.Whole is not null && parts.Above < parts.Below && parts.Below <= 64 && int.IsPow2(parts.Below) ? null : written;
    }

    /// <summary>Whether two figures may be items of one list: 1/4, 1/6 or 1075, 850; not 1075, 230.</summary>
    public static bool AreAlike(ReadOnlySpan<char> one, ReadOnlySpan<char> other)
    {
        if (IsProper(one) && IsProper(other)) return !one.SequenceEqual(other);
        return int.TryParse(one, NumberStyles.None, CultureInfo.InvariantCulture, out var first) && int.TryParse(other, NumberStyles.None, CultureInfo.InvariantCulture, out var second)
            && first >= 100 && second >= 100 && Quantities.Within.Ratio(first, second, WidestList);
    }

    private static bool IsProper(ReadOnlySpan<char> text) => Fraction(text) is { Whole: null } parts && parts.Above < parts.Below;

    /// <summary>The parts of 1-1/2 or 1/4 at the start of a text that has no other figure; null for anything else.</summary>
    private static (int? Whole, int Above, int Below)? Fraction(ReadOnlySpan<char> text)
    {
        var length = text.IndexOfAnyExceptInRange('-', '9') is var end and >= 0 ? end : text.Length;
        var figure = text[..length];
        if (text[length..].IndexOfAnyInRange('0', '9') >= 0 || figure.IndexOf('/') is not (> 0 and var slash)) return null;
        var dash = figure[..slash].IndexOf('-');
        var whole = 0;
        if (dash > 0 && !Parse(figure[..dash], out whole)) return null;
        return Parse(figure[(dash + 1)..slash], out var above) && Parse(figure[(slash + 1)..], out var below) ? (dash > 0 ? whole : null, above, below) : null;
    }

    private static bool Parse(ReadOnlySpan<char> digits, out int number) => int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out number);
}
