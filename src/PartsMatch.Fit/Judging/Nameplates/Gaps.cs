namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Whether two tokens may belong together, by what stands between them.</summary>
internal static class Gaps
{
    /// <summary>A comma, semicolon or bar mostly parts two statements; a label is read across one only when nothing better is found.</summary>
    private const int AcrossDivider = 3;

    /// <summary>A label on a line of its own and its figure on the next.</summary>
    private const int AcrossLine = 4;

    /// <summary>THERM. PROT, CW/CCW, CCW (LE), TEAO-PSC, 1 NO + 1 NC: what may part the pieces of one word.</summary>
    public static bool InsideWord(ReadOnlySpan<char> gap) => Only(gap, "-./()&+");

    /// <summary>5 MFD / 370 VAC, 7.5UF/440V, 10 MFD, 370 V: what may part two halves of one value.</summary>
    public static bool BetweenHalves(ReadOnlySpan<char> gap) => Only(gap, "/@,-");

    /// <summary>MO/AB, POE: what may part the words of a list.</summary>
    public static bool InList(ReadOnlySpan<char> gap) => Only(gap, "/,&+");

    /// <summary>230 V (Δ) / 400 V (Y): what may part a figure from its mark, or from the next figure.</summary>
    public static bool BesideMark(ReadOnlySpan<char> gap) => Only(gap, "/-–,.:=()");

    /// <summary>208 - 230, 115 / 230: what may join two figures that do not touch.</summary>
    public static bool JoinsFigures(ReadOnlySpan<char> gap) => gap.Trim() is ['&' or '+'] || PartsFigure(gap);

    /// <summary>208 - 230, -30 / +15, -30 °C...+15 °C: a slash, a dash or dots, of which either end is no figure by itself.</summary>
    public static bool PartsFigure(ReadOnlySpan<char> gap) => WithoutPlus(gap).Trim() is ['/' or '-' or '–'] || WithoutPlus(gap) is "…" or "..." or "..";

    /// <summary>12 IN. VAC. - 80 PSI: what stands behind a word, without the stop of its abbreviation.</summary>
    public static ReadOnlySpan<char> WithoutStop(ReadOnlySpan<char> gap) => gap is ['.', ' ', ..] ? gap[1..] : gap;

    /// <summary>Whether a plus is the sign of the figure behind it: OPENS +2 C, OPENS + 2 C. One that touches what stands before it joins two.</summary>
    public static bool EndsInPlus(ReadOnlySpan<char> gap) =>
        gap.TrimEnd() is [.., var before, '+'] && (char.IsWhiteSpace(before) || Characters.Divides(before) || before is '/' or '-' or '–' or '.');

    /// <summary>Whether a minus that may be the sign of the figure behind it stands free: OPENS - 5 C. On another plate it is a dash.</summary>
    public static bool EndsInFreeMinus(ReadOnlySpan<char> gap) =>
        gap.TrimEnd() is [.., var before, '-' or '−' or '–'] && (char.IsWhiteSpace(before) || Characters.Divides(before)) && char.IsWhiteSpace(gap[^1]);

    /// <summary>Whether a plus stands free: OPENS + 5 C.</summary>
    public static bool EndsInFreePlus(ReadOnlySpan<char> gap) => EndsInPlus(gap) && char.IsWhiteSpace(gap[^1]);

    /// <summary>OPENS +2 C, -30 / +15 C: what stands before a figure, without a plus that is its sign.</summary>
    private static ReadOnlySpan<char> WithoutPlus(ReadOnlySpan<char> gap) => EndsInPlus(gap) ? gap.TrimEnd()[..^1] : gap;

    /// <summary>What it costs to read a label with the figure or word behind it, OPENS @ 400 PSI; null when they do not belong together.</summary>
    public static int? FromLabel(PlateText plate, int label, int at, int end) => Cost(plate, label, at, end, ":=.#@-–—_()[]<>", ",;|¦");

    /// <summary>What it costs to read a label with the figure or word before it.</summary>
    public static int? ToLabel(PlateText plate, int value, int at, int end) => Cost(plate, value, at, end, "-–.()[]_", ",;|¦/");

    private static int? Cost(PlateText plate, int from, int at, int end, string signs, string dividers)
    {
        var gap = plate.Is(at, TokenKind.Number) ? WithoutPlus(plate.Gap(at)) : plate.Gap(at);
        if (!plate.SameLine(at)) return plate.FillLine(from, at) && plate.FillLine(at, end) && Only(gap, signs) ? AcrossLine : null;
        return Only(gap, signs) ? 0 : Only(gap, signs, dividers) ? AcrossDivider : null;
    }

    private static bool Only(ReadOnlySpan<char> gap, string signs, string others = "")
    {
        foreach (var character in gap)
        {
            if (!char.IsWhiteSpace(character) && !signs.Contains(character, StringComparison.Ordinal) && !others.Contains(character, StringComparison.Ordinal)) return false;
        }

        return true;
    }
}
