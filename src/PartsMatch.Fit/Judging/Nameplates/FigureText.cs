using System.Globalization;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Writes a plate's figures so that the fields' forms read them as they are meant.</summary>
internal static class FigureText
{
    /// <summary>Figures with commas between lie nearer together than this: 1075, 850 RPM.</summary>
    private const double WidestList = 2.5;

    /// <summary>
    /// A text for a form: 1½ is 1-1/2, or 1.5 where a slash would part two figures, and 3/2 HP are three and two, not one and a half.
    /// Null when it could mean two things: 1-1/2 A.
    /// </summary>
    public static string? For(bool takesFractions, ReadOnlySpan<char> text)
    {
        if (VulgarFractions.SpeltOut(WithoutDots(WithoutTolerance(text)), takesFractions) is not { } written) return null;
        if (Fraction(WithoutSpaces(written)) is not { } parts) return written;
        if (takesFractions && parts.Whole is null && HasLostDash(parts.Above, parts.Below)) return null;
        return takesFractions
            ? parts.Whole is null && parts.Above > parts.Below && parts.Below > 0 ? written.Replace("/", " / ", StringComparison.Ordinal) : written
            : parts.Whole is not null && parts.Above < parts.Below && parts.Below <= 64 && int.IsPow2(parts.Below) ? null : written;
    }

    /// <summary>20 F of 20 F ±5 F, 20 F of 20 ±5 F, 20 F TO 80 F of 20 ±2 F TO 80 ±2 F: a unit behind the tolerance is that of the figure, too.</summary>
    private static string WithoutTolerance(ReadOnlySpan<char> text)
    {
        if (Tolerances.In(text) is not { From: > 0 } tolerance) return text.ToString();
        var figure = text[..tolerance.From].TrimEnd(" (");
        var rest = text[tolerance.To..].TrimStart(" )");
        if (!figure.IsEmpty && char.IsLetter(figure[^1]) && !rest.StartsWith("TO ", StringComparison.OrdinalIgnoreCase)) rest = rest.TrimStart('°')[LettersAtStart(rest.TrimStart('°'))..].TrimStart(" )");
        return $"{figure} {WithoutTolerance(rest)}".TrimEnd(' ', ')');
    }

    private static int LettersAtStart(ReadOnlySpan<char> text)
    {
        var end = 0;
        while (end < text.Length && char.IsLetter(text[end])) end++;
        return end;
    }

    /// <summary>How long the dots of a span are that a text begins with, -30...+15, 220…240 or -30..+15; 0 where it begins with none. Two of them may be a decimal point that was typed twice, 2..15, and count only before a sign.</summary>
    public static int Dots(ReadOnlySpan<char> text) => text switch
    {
        ['…', ..] => 1,
        ['.', '.', '.', ..] => 3,
        ['.', '.', '+' or '-' or '−', ..] => 2,
        _ => 0,
    };

    private static string WithoutDots(string text)
    {
        for (var at = 1; at < text.Length; at++)
        {
            var isBehindUnit = char.IsLetter(text[at - 1]);
            var behind = at + (isBehindUnit && text.AsSpan(at) is ['.', '.', not '.', ..] ? 2 : Dots(text.AsSpan(at)));
            if (behind > at && behind < text.Length && (isBehindUnit || Characters.IsFigure(text[at - 1])) && (Characters.IsFigure(text[behind]) || text[behind] is '+' or '-' or '−')) return $"{text[..at]} to {text[behind..]}";
        }

        return text;
    }

    /// <summary>The two ends of a span that rises, each as it stands, and the unit behind the second: 100 and 225 of 100-225 PSI. Null for anything else.</summary>
    public static (string Low, string High, string Unit)? Ends(ReadOnlySpan<char> text)
    {
        var plain = WithoutDots(WithoutTolerance(text)).Trim();
        if (!TradeNumber.TryRead(plain, fractions: false, signed: true, out var low, out var length)) return null;
        var (joiner, width) = Joiner(plain, length);
        if (joiner < 0) return null;
        var high = plain[(joiner + width)..].TrimStart();
        if (!TradeNumber.TryRead(high, fractions: false, signed: true, out var most, out var behind) || most.Double <= low.Double) return null;
        return (plain[..joiner].TrimEnd(), high, high[behind..].Trim());
    }

    /// <summary>Where the dash, slash or TO of a span stands, and how long it is; -1 where there is none.</summary>
    private static (int At, int Width) Joiner(string text, int from)
    {
        for (var at = from; at < text.Length; at++)
        {
            if (text[at] is '-' or '–' or '/') return (at, 1);
            if (char.IsWhiteSpace(text[at]) && text.AsSpan(at + 1).StartsWith("to", StringComparison.OrdinalIgnoreCase)) return (at, 3);
        }

        return (-1, 0);
    }

    /// <summary>11/2 HP may be one and a half, its dash lost, sooner than eleven and two.</summary>
    private static bool HasLostDash(int above, int below) => above is > 10 and < 100 && below is 2 or 3 or 4 or 8 && above % 10 is > 0 and var rest && rest < below;

    /// <summary>Whether two figures may be items of one list: 1/4, 1/6 or 1075, 850; not 1075, 230.</summary>
    public static bool AreAlike(ReadOnlySpan<char> one, ReadOnlySpan<char> other)
    {
        if (IsProper(one) && IsProper(other)) return !one.SequenceEqual(other);
        return int.TryParse(one, NumberStyles.None, CultureInfo.InvariantCulture, out var first) && int.TryParse(other, NumberStyles.None, CultureInfo.InvariantCulture, out var second)
            && first >= 100 && second >= 100 && Within.Ratio(first, second, WidestList);
    }

    /// <summary>A text without the commas that part thousands, 1,075; null when it has none, or another comma.</summary>
    public static string? WithoutThousands(string text)
    {
        var pieces = text.Split(',');
        if (pieces.Length == 1) return null;
        for (var at = 1; at < pieces.Length; at++)
        {
            var before = DigitsAtEnd(pieces[at - 1]);
            var stands = pieces[at - 1].Length - before;
            if (before is < 1 or > 3 || (stands == 0 ? at > 1 : pieces[at - 1][stands - 1] == '.') || DigitsAtStart(pieces[at]) != 3) return null;
        }

        return string.Concat(pieces);
    }

    private static int DigitsAtStart(string text) => text.AsSpan().IndexOfAnyExceptInRange('0', '9') is >= 0 and var end ? end : text.Length;

    private static int DigitsAtEnd(string text) => text.Length - 1 - text.AsSpan().LastIndexOfAnyExceptInRange('0', '9');

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

    private static string WithoutSpaces(string figures) => figures.Replace(" / ", "/", StringComparison.Ordinal).Replace("/ ", "/", StringComparison.Ordinal).Replace(" /", "/", StringComparison.Ordinal);

    private static bool Parse(ReadOnlySpan<char> digits, out int number) => int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out number);
}
