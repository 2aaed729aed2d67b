namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>How far a figure may be off: ±5, +/- 1/8, +10 -5. What is behind the sign is one figure, and no part of it is another's.</summary>
internal static class Tolerances
{
    private static readonly char[] Between = [' ', ',', ';', ':', '='];

    /// <summary>A tolerance within a text; null when there is none.</summary>
    public static Stretch? In(ReadOnlySpan<char> text)
    {
        for (var at = 0; at < text.Length; at++)
        {
            if ((SharesEnd(text[at..]) ?? End(text[at..], isBehindFigure: true)) is { } end) return new(at, at + end);
        }

        return null;
    }

    /// <summary>How long a tolerance is that a text begins with; null when it begins with none.</summary>
    /// <param name="text">The text, in plain signs.</param>
    /// <param name="isBehindFigure">Whether a figure, or a figure and its unit, stands before it: the range +5/+35 C is none, nor is a label's +10 -10.</param>
    public static int? End(ReadOnlySpan<char> text, bool isBehindFigure) =>
        SignEnd(text) is { } sign && FigureEnd(text, AfterSpaces(text, sign)) is { } end ? end : isBehindFigure ? PairEnd(text) : null;

    /// <summary>How long a share is that a text begins with, ±6 %, +/-6% or 6 %; null when it begins with none.</summary>
    public static int? ShareEnd(ReadOnlySpan<char> text)
    {
        if (FigureEnd(text, SignsEnd(text)) is not { } end) return null;
        var share = AfterSpaces(text, end);
        return share < text.Length && text[share] == '%' ? share + 1 : null;
    }

    /// <summary>How long a share with its sign is, or one with a figure for each, that a text begins with: ±10 %, +10/-15 %, -15 % +10 %; null when it begins with none.</summary>
    public static int? SharesEnd(ReadOnlySpan<char> text)
    {
        if (SignEnd(text) is not null) return ShareEnd(text);
        if (text.IsEmpty || !(text[0] == '+' || IsMinus(text[0])) || FigureEnd(text, 1) is not { } first) return null;
        var behind = AfterSpaces(text, first);
        if (behind < text.Length && text[behind] == '%') behind = AfterSpaces(text, behind + 1);
        if (behind < text.Length && text[behind] is '/' or ',') behind = AfterSpaces(text, behind + 1);
        if (behind == text.Length || !(text[0] == '+' ? IsMinus(text[behind]) : text[behind] == '+') || FigureEnd(text, behind + 1) is not { } second) return null;
        var share = AfterSpaces(text, second);
        return share < text.Length && text[share] == '%' ? share + 1 : null;
    }

    /// <summary>What of a share stands behind its sign: 6 % of ±6 %.</summary>
    public static ReadOnlySpan<char> ShareOf(ReadOnlySpan<char> text) => text[SignsEnd(text)..];

    private static int SignsEnd(ReadOnlySpan<char> text) => SignEnd(text) is { } sign ? AfterSpaces(text, sign) : 0;

    /// <summary>A text without the shares in it, and without their labels: 45 MFD of 45 TOL ±6 % MFD.</summary>
    /// <param name="text">The text, in plain signs.</param>
    /// <param name="isLabel">Whether a word announces a share.</param>
    public static string WithoutShares(string text, Func<string, bool> isLabel)
    {
        for (var at = 1; at < text.Length; at++)
        {
            var isInside = Characters.IsFigure(text[at]) && (Characters.IsFigure(text[at - 1]) || text[at - 1] is '.' or ',');
            if (isInside || ShareEnd(text.AsSpan(at)) is not { } end) continue;
            var (before, behind) = (text[..at].TrimEnd(Between), WithoutShares($" {text[(at + end)..]}", isLabel).TrimStart(Between));
            var word = before.Length;
            while (word > 0 && char.IsLetter(before[word - 1])) word--;
            if (isLabel(before[word..])) before = before[..word].TrimEnd(Between);
            word = 0;
            while (word < behind.Length && char.IsLetter(behind[word])) word++;
            if (isLabel(behind[..word])) behind = behind[word..].TrimStart(Between);
            return $"{before} {behind}".TrimEnd();
        }

        return text;
    }

    /// <summary>±, +/-, -/+, + / -, +-.</summary>
    private static int? SignEnd(ReadOnlySpan<char> text)
    {
        if (text is ['±', ..]) return 1;
        if (text is ['+', var next, ..] && IsMinus(next)) return 2;
        if (text.IsEmpty || !(text[0] == '+' || IsMinus(text[0]))) return null;
        var slash = AfterSpaces(text, 1);
        if (slash == text.Length || text[slash] != '/') return null;
        var second = AfterSpaces(text, slash + 1);
        return second < text.Length && (text[0] == '+' ? IsMinus(text[second]) : text[second] == '+') ? second + 1 : null;
    }

    /// <summary>+10/-5, +10 -5.</summary>
    private static int? PairEnd(ReadOnlySpan<char> text)
    {
        if (text is not ['+', ..] || FigureEnd(text, 1) is not { } first) return null;
        var slash = AfterSpaces(text, first);
        var second = slash < text.Length && text[slash] == '/' ? AfterSpaces(text, slash + 1) : slash;
        return second > first && second < text.Length && IsMinus(text[second]) ? FigureEnd(text, second + 1) : null;
    }

    /// <summary>The end of 5, .125, 2,5, 1/8, 1-1/8 or ½ at a place; null when there is none.</summary>
    private static int? FigureEnd(ReadOnlySpan<char> text, int from)
    {
        var whole = DigitsEnd(text, from);
        if (whole > from && FractionEnd(text, from) is { } fraction) return fraction;
        if (whole > from && whole < text.Length && text[whole] == '-' && FractionEnd(text, whole + 1) is { } mixed) return mixed;
        if (whole < text.Length && text[whole] is '.' or ',' && DigitsEnd(text, whole + 1) is var decimals && decimals > whole + 1) return decimals;
        return whole > from ? whole : null;
    }

    private static int? FractionEnd(ReadOnlySpan<char> text, int from)
    {
        var above = DigitsEnd(text, from);
        return above > from && above < text.Length && text[above] == '/' && DigitsEnd(text, above + 1) is var below && below > above + 1 ? below : null;
    }

    private static int DigitsEnd(ReadOnlySpan<char> text, int from)
    {
        while (from < text.Length && Characters.IsFigure(text[from])) from++;
        return from;
    }

    private static int AfterSpaces(ReadOnlySpan<char> text, int from)
    {
        while (from < text.Length && text[from] == ' ') from++;
        return from;
    }

    private static bool IsMinus(char character) => character is '-' or '−' or '–';
}
