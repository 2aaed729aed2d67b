namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Reads several figures behind each name of a step: HI 1/3 HP 1075 RPM LO 1/6 HP 825 RPM. What stands at the same place belongs to the same field, and no figure is its value without the others.</summary>
internal sealed class StepRows(PlateText plate, Lexicon lexicon, ValueReader reader)
{
    /// <summary>No motor has more speeds.</summary>
    private const int MostSteps = 8;

    /// <summary>Power, speed, amps, and one to spare.</summary>
    private const int MostFigures = 4;

    private sealed record Part(WordNode? Label, int Figure);

    private sealed record Row(int Step, int To, IReadOnlyList<Part> Parts);

    /// <summary>All such rows, with the labels behind their figures or before them; where both make sense, neither is read.</summary>
    public IEnumerable<Placement> All()
    {
        for (var at = 0; at < plate.Count; at++)
        {
            if (Step(at) is null) continue;
            var (behind, before) = (Read(at, labelsBefore: false), Read(at, labelsBefore: true));
            if (behind is not null) yield return behind;
            if (before is not null && !(behind?.To == before.To && behind.SaysAs(before))) yield return before;
        }
    }

    private Placement? Read(int from, bool labelsBefore)
    {
        var rows = new List<Row>();
        for (var at = from; rows.Count < MostSteps && RowAt(at, labelsBefore, rows.FirstOrDefault()) is { } row; at = row.To) rows.Add(row);

        if (rows.Count < 2 || rows.DistinctBy(row => row.Step).Count() < rows.Count) return null;
        var to = rows[^1].To;
        rows.Sort((one, other) => one.Step.CompareTo(other.Step));
        var values = new List<PlacedValue>();
        foreach (var (label, figures) in rows[0].Parts.Select((part, place) => (part.Label, Figures(rows, place))).OrderBy(pair => pair.Label is null))
        {
            if ((label is null ? Bare(figures, values) : Labelled(label, figures)) is not { } value || values.Exists(other => other.Field == value.Field)) return null;
            values.Add(value with { Where = [new(from, to)] });
        }

        return new(from, to, labelsBefore ? LabelStands.Before : LabelStands.Behind, 0, values);
    }

    private string Figures(List<Row> rows, int place) => string.Join(" / ", rows.Select(row => plate.Slice(row.Parts[place].Figure, row.Parts[place].Figure + 1).ToString()));

    private PlacedValue? Labelled(WordNode label, string figures)
    {
        var read = label.Labels.Where(entry => lexicon.TakesSteps(entry.Field)).Select(entry => (entry.Field, Text: reader.Read(entry.Field, figures, entry.Unit))).Where(pair => pair.Text is not null).Distinct().ToList();
        return read is [var (only, text)] ? new(only, text!) : null;
    }

    /// <summary>Figures without a label are the steps' own, unless they can be those of a field that is not beside them: the watts of HI 1075 2.1 A LO 825 1.5 A.</summary>
    private PlacedValue? Bare(string figures, List<PlacedValue> beside) =>
        lexicon.StepsOf is { } field && reader.Read(field, figures, null) is { } text
        && !lexicon.ByUnit.Any(other => other != field && !beside.Exists(value => value.Field == other) && other.Form.UnitSpellings.Any(unit => reader.Read(other, figures, unit) is not null))
            ? new(field, text) : null;

    /// <summary>The name of a step and the figures behind it, on one line. The first row says which labels the others have: what stands behind those is no part of them.</summary>
    private Row? RowAt(int from, bool labelsBefore, Row? first)
    {
        if (Step(from) is not { } step) return null;
        var parts = new List<Part>();
        var at = step.End;
        while (parts.Count < (first?.Parts.Count ?? MostFigures) && at < plate.Count && plate.SameLine(at))
        {
            var hasLabel = first is null || first.Parts[parts.Count].Label is not null;
            var before = labelsBefore && hasLabel ? Label(at) : null;
            var figure = before?.End ?? at;
            if (!plate.Is(figure, TokenKind.Number) || !plate.SameLine(figure)) break;
            var behind = !labelsBefore && hasLabel ? Label(figure + 1) : null;
            parts.Add(new((before ?? behind)?.Node, figure));
            at = behind?.End ?? figure + 1;
        }

        var isRow = first is null ? parts.Count > 1 : parts.Select(part => part.Label).SequenceEqual(first.Parts.Select(part => part.Label));
        return isRow ? new(step.Node.Step!.Value, at, parts) : null;
    }

    private Match? Step(int at) => plate.Words.Longest(at, node => node.Step is not null);

    private Match? Label(int at) => at < plate.Count && plate.SameLine(at) ? plate.Words.Longest(at, node => node.Labels.Count > 0) : null;
}
