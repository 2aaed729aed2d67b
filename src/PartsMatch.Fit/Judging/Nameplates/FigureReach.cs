namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>How far a figure reaches: 208-230; 208 - 230; 100 to 240; 1 1/2; 1 1 / 2; 5,4/2,8.</summary>
internal sealed class FigureReach(PlateText plate, Lexicon lexicon)
{
    /// <summary>No plate's figure has more pieces that do not touch.</summary>
    private const int MostPieces = 6;

    /// <summary>Units of several words (deg C, V AC, 1/min) have at most so many tokens.</summary>
    private const int LongestUnit = 3;

    /// <summary>Nobody writes more than 99 whole ones before a fraction.</summary>
    private const int MostWholeDigits = 2;

    private static readonly List<int> None = [];
    private static readonly List<(UnitSet Units, int End)> NoUnits = [];
    private static readonly List<(int Figure, int Unit)> NoFigures = [];

    private readonly List<int>?[] ends = new List<int>?[plate.Count];
    private readonly List<(UnitSet Units, int End)>?[] units = new List<(UnitSet, int)>?[plate.Count];
    private List<(int Figure, int Unit)>?[]? figures;

    /// <summary>The tokens behind each end that a figure may have, the shortest first.</summary>
    public List<int> Ends(int from) => plate.Is(from, TokenKind.Number) ? ends[from] ??= FindEnds(from) : None;

    private List<int> FindEnds(int from)
    {
        var found = new List<int>(1) { from + 1 };
        for (var end = from + 1; found.Count < MostPieces; found.Add(end))
        {
            if (Joins(end)) end++;
            else if (plate.IsWord(end, "to") && plate.Is(end + 1, TokenKind.Number) && plate.SameLine(end) && plate.SameLine(end + 1)) end += 2;
            else break;
        }

        if (ToleranceEnd(found[^1]) is { } tolerance) found.Add(tolerance);
        return found;
    }

    /// <summary>The token behind a unit of a field that begins with a token; null when none does.</summary>
    public int? UnitEnd(Field field, int at) => UnitEnd(lexicon.UnitsOf(field), at, lexicon.Tolerance is null || lexicon.Tails.ContainsKey(field));

    /// <summary>The token behind one of some units that begins with a token; null when none does. The longest counts.</summary>
    public int? UnitEnd(UnitSet units, int at) => UnitEnd(units, at, mayHaveShare: true);

    private int? UnitEnd(UnitSet units, int at, bool mayHaveShare)
    {
        foreach (var (spelt, end) in UnitsAt(at))
        {
            if (spelt == units) return mayHaveShare && ToleranceEnd(end) is { } tolerance ? UnitEnd(units, tolerance, mayHaveShare) ?? tolerance : end;
        }

        return null;
    }

    /// <summary>The sets of units of which one begins with a token, each with the token behind it; the longest counts and stands first.</summary>
    private List<(UnitSet Units, int End)> UnitsAt(int at) => at < plate.Count ? units[at] ??= FindUnits(at) : NoUnits;

    private List<(UnitSet Units, int End)> FindUnits(int at)
    {
        List<(UnitSet, int)>? found = null;
        for (var end = Math.Min(at + LongestUnit, plate.Count); end > at; end--)
        {
            if (plate.Tokens[at].Line != plate.Tokens[end - 1].Line) continue;
            foreach (var spelt in lexicon.UnitsSpelt(plate.Slice(at, end))) (found ??= []).Add((spelt, end));
            if (plate.Gap(at).Trim() is not "/") continue;
            foreach (var spelt in lexicon.UnitsSpelt(plate.WithGap(at, end))) (found ??= []).Add((spelt, end));
        }

        return found ?? NoUnits;
    }

    /// <summary>The token behind a figure that begins with a token and has a unit of a field, the shortest; null when none does.</summary>
    public int? FirstUnit(int from, Field field)
    {
        foreach (var end in Ends(from))
        {
            if (UnitEnd(field, end) is { } unit) return unit;
        }

        return null;
    }

    /// <summary>The figures that may end right before a token with a unit, and where that begins.</summary>
    public List<(int Figure, int Unit)> FiguresBefore(int at) => (figures ??= FindFigures())[at] ?? NoFigures;

    private List<(int Figure, int Unit)>?[] FindFigures()
    {
        var found = new List<(int, int)>?[plate.Count + 1];
        for (var figure = 0; figure < plate.Count; figure++)
        {
            foreach (var unit in Ends(figure))
            {
                foreach (var (units, end) in UnitsAt(unit))
                {
                    (found[end] ??= []).Add((figure, unit));
                    if (UnitEnd(units, unit) is { } whole && whole != end) (found[whole] ??= []).Add((figure, unit));
                }
            }
        }

        return found;
    }

    /// <summary>Whether a value that begins and ends with some tokens is a figure without a unit.</summary>
    public bool IsBare(int from, int to) => Ends(from).Contains(to);

    /// <summary>Where a figure without a unit begins that ends right before a token, from another on; null when none does.</summary>
    public int? BareBefore(int from, int at)
    {
        for (var figure = Math.Max(from, at - (2 * MostPieces)); figure < at; figure++)
        {
            if (IsBare(figure, at)) return figure;
        }

        return null;
    }

    /// <summary>Whether a unit of any field begins with a token: of CLOCK 60 HZ the 60 are no volts.</summary>
    public bool IsUnitOfAny(int at)
    {
        foreach (var (units, _) in UnitsAt(at))
        {
            if (lexicon.IsOfField(units)) return true;
        }

        return false;
    }

    /// <summary>Whether a figure with a plus goes on with the one before it, as the +15 °C of -30 °C +15 °C: both have one unit, or the second none.</summary>
    public bool GoesOn(int at) => plate.Is(at, TokenKind.Number) && plate.SameLine(at) && Gaps.EndsInPlus(plate.Gap(at)) && HasUnitOfBefore(at);

    private bool HasUnitOfBefore(int at) =>
        lexicon.Shape.Fields.Any(field => UnitBefore(field, at) is { } unit && (Ends(at).Exists(end => UnitEnd(field, end) is { } to && AreOne(unit, plate.Slice(end, to))) || !Ends(at).Exists(IsUnitOfAny)));

    /// <summary>Whether a figure is the second end of a span, the 7.5 of -0.2 TO 7.5 BAR: what stands behind it says nothing of this one alone.</summary>
    public bool IsSecondEnd(int at) =>
        plate.Is(at, TokenKind.Number) && plate.IsWord(at - 1, "to") && plate.SameLine(at) && plate.SameLine(at - 1) && IsBehindFigure(at);

    private bool IsBehindFigure(int at) =>
        Enumerable.Range(Math.Max(0, at - 2 - LongestUnit), Math.Min(LongestUnit + 1, at - 1)).Any(from => Ends(from).Exists(end => end == at - 1 || lexicon.Shape.Fields.Any(field => UnitEnd(field, end) == at - 1)));

    private string? UnitBefore(Field field, int at) =>
        Enumerable.Range(Math.Max(0, at - LongestUnit), Math.Min(LongestUnit, at)).Where(unit => plate.Is(unit - 1, TokenKind.Number) && UnitEnd(field, unit) == at).Select(unit => plate.Slice(unit, at).ToString()).FirstOrDefault();

    /// <summary>°C and C are one unit.</summary>
    private static bool AreOne(string unit, ReadOnlySpan<char> other) => unit.AsSpan().TrimStart("° ").Equals(other.TrimStart("° "), StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether a figure of one of some fields ends right before a token, by its label or by its unit: 30 FLA, 30 A.</summary>
    public bool StandsBefore(IReadOnlyCollection<Placement> placements, int at, IReadOnlyCollection<Field> fields) =>
        at < plate.Count && plate.SameLine(at) && (placements.Any(one => one.To == at && one.Values.Any(value => fields.Contains(value.Field))) || FiguresBefore(at).Exists(one => fields.Any(field => UnitEnd(field, one.Unit) == at)));

    /// <summary>Whether a figure with one of some units ends right before a token: 125 VA.</summary>
    public bool StandsBehind(int at, IEnumerable<string> units) => at < plate.Count && plate.SameLine(at) && plate.Is(at - 2, TokenKind.Number) && units.Any(unit => plate.IsWord(at - 1, unit));

    /// <summary>The token behind ±5 F, TOL 6 % or 6 % TOL; null when none begins with a token.</summary>
    private int? ToleranceEnd(int at)
    {
        var from = LabelEnd(at) ?? at;
        return plate.Is(from, TokenKind.Tolerance) && plate.SameLine(at) && plate.SameLine(from) ? LabelEnd(from + 1) ?? from + 1 : null;
    }

    private int? LabelEnd(int at) =>
        lexicon.Tolerance is { } field && at < plate.Count && plate.SameLine(at) ? plate.AllWords.LongestLabel(at, field)?.End : null;

    /// <summary>Whether a number continues the one before it.</summary>
    public bool Joins(int at)
    {
        if (!plate.Is(at, TokenKind.Number) || !plate.SameLine(at)) return false;
        var gap = plate.Gap(at);
        if (gap is "," || Gaps.JoinsFigures(gap)) return true;
        if (gap.Trim() is ",") return plate.Is(at - 1, TokenKind.Number) && FigureText.AreAlike(plate.Slice(at - 1, at), plate.Slice(at, at + 1));

        // A sloppy span, 208 -230: a minus would make no sense in the middle of a figure, unless the first has a sign as well, +15 -25. And 1 1/2: one and a half.
        var text = plate.Slice(at, at + 1);
        return plate.Is(at - 1, TokenKind.Number) && gap is " " && ((text[0] == '-' && !Gaps.EndsInPlus(plate.Gap(at - 1))) || (IsFraction(text) && IsWhole(plate.Slice(at - 1, at))) || IsAboveSlash(at));
    }

    /// <summary>The 1 before the slash of 1 1 / 2, but not that of 230 1 / 4.</summary>
    private bool IsAboveSlash(int at) => IsWhole(plate.Slice(at - 1, at)) && plate.Is(at + 1, TokenKind.Number) && plate.SameLine(at + 1) && plate.Gap(at + 1).Trim() is "/" && !plate.Slice(at, at + 2).ContainsAny('-', '.', '+');

    /// <summary>Of 115/2/60 1/4 HP the 60 is no part of the horsepower, nor is the 230 of 208-230 1/4 HP; of 3/4-1 1/2 HP the 1 is.</summary>
    private static bool IsWhole(ReadOnlySpan<char> text) => text[(text.LastIndexOf('-') + 1)..] is { Length: <= MostWholeDigits } whole && whole.IndexOfAnyExceptInRange('0', '9') < 0;

    private static bool IsFraction(ReadOnlySpan<char> text)
    {
        if (text.Length == 1 && !char.IsAsciiDigit(text[0])) return true;
        var slash = text.IndexOf('/');
        return slash > 0 && text[(slash + 1)..].IndexOf('/') < 0 && text.IndexOfAny('-', '.', '+') < 0;
    }
}
