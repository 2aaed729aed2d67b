namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>A second figure behind an X, the 4 of 1/2 X 4, or at the other end of a span, the 225 of 100-225.</summary>
/// <param name="Field">Its field.</param>
/// <param name="Text">Its value, as the field's form writes it.</param>
/// <param name="At">The token of the X; null where the two are one figure of the plate.</param>
internal sealed record SecondFigure(Field Field, string Text, int? At);

/// <summary>A value that begins with some token.</summary>
/// <param name="To">The token behind it.</param>
/// <param name="Text">The value, as its field's form writes it.</param>
/// <param name="Second">What stands behind an X; null when there is none.</param>
/// <param name="ThirdAt">The token of the X before a third figure; null when there is none.</param>
internal readonly record struct Found(int To, string Text, SecondFigure? Second = null, int? ThirdAt = null);

/// <summary>Finds the values of a given field that begin with a given token.</summary>
/// <remarks>Plain loops into lists: a plate of 4,000 characters is asked some ten thousand times.</remarks>
internal sealed class ValueSearch(PlateText plate, Lexicon lexicon, ValueReader reader, FigureReach reach, RepeatedFigures repeated)
{
    /// <summary>Letters behind a frame's number that do not touch it: FR 56 C.</summary>
    private const int LongestSuffix = 2;

    private static readonly List<Found> None = [];

    /// <summary>All values of a label's field that begin with a token.</summary>
    public List<Found> At(int from, LabelEntry label)
    {
        if (from >= plate.Count) return None;
        var found = new List<Found>();
        if (label.Field.Form.ValueType == typeof(string))
        {
            AddWording(from, label.Field, found);
            return found;
        }

        if (plate.Is(from, TokenKind.Number)) AddFigures(from, label, found);
        else if (label.Field.Form.MayBeginWithLetter) AddPrefixed(from, label.Field, found);
        AddWords(from, label.Field, found);
        return found;
    }

    private void AddWords(int from, Field field, List<Found> found)
    {
        foreach (var match in plate.Words[from])
        {
            foreach (var word in match.Node.Words)
            {
                if (word.Field == field && !IsOthers(from, word) && reader.Read(field, word.Value, null) is { } text) found.Add(new(match.End, text));
            }
        }
    }

    /// <summary>The NC of AUX CONTACTS NC, of which CONTACTS is no label by itself.</summary>
    private bool IsOthers(int from, WordEntry word) => word.NeverBeside is { } other && plate.Words.Ending(from).Exists(before => before.Word.Announces(other));

    /// <summary>FR S56C: a letter that touches the figure.</summary>
    private void AddPrefixed(int from, Field field, List<Found> found)
    {
        if (plate.Tokens[from].Length > 1 || !plate.Is(from + 1, TokenKind.Number) || !plate.Gap(from + 1).IsEmpty) return;
        var figure = from + 2;
        var end = UnitEnd(figure, field) ?? figure;
        if (reader.Read(field, plate.Slice(from, end), null) is { } text) found.Add(new(end, text));
        else if (reader.Read(field, plate.Slice(from, figure), null) is { } bare) found.Add(new(figure, bare));
    }

    private void AddWording(int from, Field field, List<Found> found)
    {
        var end = plate.ChunkEnd(from);
        if (end == from + 1 && reader.Read(field, plate.Slice(from, end).ToString().ToUpperInvariant(), null) is { } text) found.Add(new(end, text));
    }

    private void AddFigures(int from, LabelEntry label, List<Found> found)
    {
        if (label.Label.To is { } most)
        {
            AddEnds(from, label, lexicon.FieldOf(most), found);
            return;
        }

        foreach (var end in reach.Ends(from))
        {
            var behind = UnitEnd(end, label.Field);
            var whole = behind is { } stands ? Figure(from, stands, label, null) : null;

            // FAIL SAFE 1.5 HR: no unit is meant but the one that stands there.
            if (!IsTail(from, end, label.Field) && !HasOthersUnit(end, label) && Figure(from, end, label, label.Unit) is { } bare && (whole is null || label.Unit is null || whole == bare || IsNextLabel(end, behind, label))) found.Add(new(end, bare));
            if (behind is { } unit)
            {
                if (whole is not null) found.Add(new(unit, whole));

                if (SecondEnd(unit, label.Field) is { } to && reader.Read(label.Field, plate.Slice(from, to), null) is { } both) found.Add(new(to, both));
            }

            // AUTO RESET 300 (20.7 BAR), MAX 42 (609 PSI): the brackets tell the unit that the label does not, or that its own is not.
            if (behind is null && (label.Unit is null || Figure(from, end, label, label.Unit) is null) && repeated.InBrackets(label.Field, end) is { } closed && repeated.MayRepeat(label.Field, from, end, closed) && reader.Read(label.Field, plate.Slice(end, closed), null) is { } told) found.Add(new(closed, told));
            if (label.Label.By is { } second) AddBy(from, end, label, lexicon.FieldOf(second), found);
        }
    }

    /// <summary>HP 1/2 KW 0.37: whether what stands behind a figure is a unit of another one's that is announced as this one is by its own.</summary>
    private bool IsNextLabel(int end, int? behind, LabelEntry label) =>
        behind is { } unit && !PlateUnits.AreOne(label.Field, label.Unit!, plate.Slice(end, unit).ToString())
        && plate.Words[end].Exists(match => match.End == unit && match.Node.Labels.Exists(next => next.Field == label.Field && next.Label == label.Label && At(unit, next).Count > 0));

    /// <summary>115 V / 230 V, 20 F TO 80 F: where a second figure ends, with its unit, behind the unit of the first; null when none stands there.</summary>
    private int? SecondEnd(int unit, Field field)
    {
        var next = plate.IsWord(unit, "to") && plate.Is(unit + 1, TokenKind.Number) && plate.SameLine(unit) && plate.SameLine(unit + 1) ? unit + 1 : unit;
        if (!plate.Is(next, TokenKind.Number) || !(next > unit || Gaps.JoinsFigures(Gaps.WithoutStop(plate.Gap(unit))))) return null;
        return reach.FirstUnit(next, field) ?? next + 1;
    }

    /// <summary>100-225 PSI, -40 F TO 50 F: the two ends of a span, each of its own field; the lower stands first, and one unit is meant for both.</summary>
    private void AddEnds(int from, LabelEntry label, Field most, List<Found> found)
    {
        foreach (var end in reach.Ends(from))
        {
            var unit = reach.UnitEnd(label.Field, end);
            foreach (var to in ((int?[])[end, unit, unit is { } behind ? SecondEnd(behind, label.Field) : null]).OfType<int>())
            {
                if (FigureText.Ends(plate.Slice(from, to)) is not { } ends) continue;
                var meant = ends.Unit.Length > 0 ? ends.Unit : label.Unit;
                if (reader.Read(label.Field, ends.Low, meant) is { } low && reader.Read(most, ends.High, meant) is { } high) found.Add(new(to, low, new(most, high, null)));
            }
        }
    }

    /// <summary>A figure with or without its unit. The stop of hp.25 is a decimal point, for a symbol has no stop; that of CAP.5 may be either, and then nothing is read.</summary>
    private string? Figure(int from, int to, LabelEntry label, string? unit)
    {
        if (plate.LosesDecimals(from, to) && label.Field.Form.ValueType != typeof(int) && label.Field.Form.Choices.Count == 0) return null;
        var whole = reader.Read(label.Field, plate.Slice(from, to), unit);
        if (!plate.IsAtStop(from) || reader.Read(label.Field, $".{plate.Slice(from, to)}", unit) is not { } behindPoint) return whole;
        return whole is null || (label.IsSymbol && plate.Gap(from - 1) is not ".") ? behindPoint : null;
    }

    /// <summary>Whether a figure is a usual second one of a field: 370.</summary>
    public bool IsUsualTail(int at, Field field) => plate.Is(at, TokenKind.Number) && lexicon.IsUsualTail(field, plate.Slice(at, at + 1));

    /// <summary>Whether a figure is a second one by its size and its unit: the 250 VAC of 88-108 MFD 250 VAC are no 250 µF.</summary>
    private bool IsTail(int from, int end, Field field) => end == from + 1 && reach.UnitEnd(lexicon.TailUnits, end) is not null && IsUsualTail(from, field);

    /// <summary>Whether a figure has a unit that is no label's and not the field's: MOP 35 PSI is no 35 °F, nor is CUT-IN 30 PSI on a thermostat, that has no pressures; but the HP of CUT-OUT 400 HP CONTROL begins a word.</summary>
    private bool HasOthersUnit(int end, LabelEntry label) =>
        label.Unit is not null && end < plate.Count && plate.SameLine(end) && (reach.IsUnitOfAny(end) || reach.UnitEnd(lexicon.UnitsOfAny, end) is not null) && reach.UnitEnd(label.Field, end) is null && !BeginsWord(end);

    private bool BeginsWord(int at) => plate.Words[at].Exists(match => match.Node.Labels.Count > 0 || (match.Node.Free.Count > 0 && match.End > at + 1));

    /// <summary>The token behind a figure that has the unit of a setting of another kind at a label, the 30 PSI of CUT-IN 30 PSI on a thermostat; null when none does.</summary>
    public int? OthersEnd(int at, LabelEntry label)
    {
        int? last = null;
        foreach (var end in reach.Ends(at))
        {
            if (HasOthersUnit(end, label)) last = reach.UnitEnd(lexicon.UnitsOfAny, end) ?? last;
        }

        return last;
    }

    /// <summary>Where a figure ends with what belongs to it: 230 V, 48Y, FR 56 C, CAP 5/370 V; null when nothing does.</summary>
    private int? UnitEnd(int end, Field field)
    {
        if (reach.UnitEnd(field, end) is { } unit) return unit;
        if (lexicon.Tails.ContainsKey(field)) return reach.UnitEnd(lexicon.TailUnits, end);
        if (!lexicon.UnitsOf(field).IsEmpty || !plate.Is(end, TokenKind.Word) || !plate.SameLine(end)) return null;
        return plate.Gap(end).IsEmpty || (plate.Tokens[end].Length <= LongestSuffix && plate.Words[end].All(match => match.Node.Labels.Count == 0)) ? end + 1 : null;
    }

    /// <summary>1/2 X 4, 3/8 ODF X 1/2 ODF: a figure of the label's field and one of another; a unit behind the second is meant for both, and the label that stands behind both may stand behind the first as well.</summary>
    private void AddBy(int from, int end, LabelEntry label, Field other, List<Found> found)
    {
        var behind = reach.UnitEnd(label.Field, end) ?? end;
        if (ByBehind(behind, label) is not { } by) return;
        foreach (var last in reach.Ends(by + 1))
        {
            var to = reach.UnitEnd(other, last) ?? last;
            var unit = to > last ? plate.Slice(last, to).ToString() : label.Unit;
            if (reader.Read(label.Field, plate.Slice(from, behind), unit) is { } first && reader.Read(other, plate.Slice(by + 1, to), unit) is { } second)
            {
                var both = new SecondFigure(other, second, by);
                found.Add(new(to, first, both));
                if (label.Label.Third is { } third && ByBehind(to, label) is { } next && ThirdEnd(next, label, third, unit) is { } all) found.Add(new(all, first, both, next));
            }
        }
    }

    /// <summary>The X behind a figure, or behind its label where that is one that stands behind; null when there is none.</summary>
    private int? ByBehind(int figureEnd, LabelEntry label)
    {
        if (plate.IsBy(figureEnd)) return figureEnd;
        var own = label.Label.OnlyBehind ? plate.Words.Longest(figureEnd, word => word.Labels.Exists(one => one.Label == label.Label))?.End : null;
        return own is { } by && plate.IsBy(by) ? by : null;
    }

    /// <summary>The end of X 1/4 behind 3/8 X 1/2.</summary>
    private int? ThirdEnd(int by, LabelEntry label, PlateThird third, string? unit)
    {
        foreach (var end in reach.Ends(by + 1))
        {
            var to = reach.UnitEnd(label.Field, end) ?? end;
            if (reader.Read(label.Field, plate.Slice(by + 1, to), unit) == third.Figure) return to;
        }

        return null;
    }
}
