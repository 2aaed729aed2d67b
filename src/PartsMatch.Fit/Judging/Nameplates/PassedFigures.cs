namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Figures that stand side by side between a label and its own figure.</summary>
/// <param name="To">The token behind the last.</param>
/// <param name="Cost">Dividers before them.</param>
/// <param name="Values">What they say; nothing for those that no field holds.</param>
internal sealed record Passed(int To, int Cost, IReadOnlyList<PlacedValue> Values);

/// <summary>Finds the figures that a label is read past, each with its unit and none twice: the 9 VA of COIL 9 VA 24 V, the 9 VA 60 HZ of COIL 9 VA 60 HZ 24 V, the 3 W of CLOCK 3 W 120 V.</summary>
internal sealed class PassedFigures(PlateText plate, ValueReader reader, FigureReach reach)
{
    /// <summary>All of them that begin with the token behind a label or figure.</summary>
    public IEnumerable<Passed> Behind(int before, int at, IReadOnlyList<PassedKind> kinds)
    {
        if (kinds.Count == 0 || !plate.Is(at, TokenKind.Number) || !plate.SameLine(at)) yield break;
        foreach (var kind in kinds)
        {
            foreach (var end in reach.Ends(at))
            {
                if (reach.UnitEnd(kind.Units, end) is not { } unit || Gaps.FromLabel(plate, before, at, unit) is not { } cost) continue;
                var word = WordBehind(kind, end, unit);
                var to = word?.End ?? unit;
                if (Says(kind, at, unit, to) is not { } read) continue;
                var said = word is { Node.AlikeTo: not null } ? [] : read;
                yield return new(to, cost, said);
                foreach (var more in Behind(at, to, [.. kinds.Where(other => other != kind)])) yield return new(more.To, cost + more.Cost, [.. said, .. more.Values]);
            }
        }
    }

    /// <summary>The word that a figure has behind its unit, or that its unit begins: HOLDING of 9 VA HOLDING, VA SEALED, or INRUSH of 33 VA INRUSH, which is not what its field holds; null where it has none.</summary>
    private Match? WordBehind(PassedKind kind, int figureEnd, int unit)
    {
        if (kind.Field is not { } field) return null;
        bool IsOfField(WordNode node) => node.AlikeTo?.Field == field || node.Labels.Exists(label => label.Field == field);
        if (plate.Words.Longest(figureEnd, IsOfField) is { } word && word.End > unit) return word;
        return unit < plate.Count && plate.SameLine(unit) ? plate.Words.Longest(unit, IsOfField) : null;
    }

    /// <summary>What a figure says, with its word, nothing where no field holds it; null where it is none of its field's.</summary>
    private IReadOnlyList<PlacedValue>? Says(PassedKind kind, int from, int unit, int to) =>
        kind.Field is not { } field ? [] : reader.Read(field, plate.Slice(from, unit), null) is { } text ? [new(field, text, new Stretch(from, to))] : null;
}
