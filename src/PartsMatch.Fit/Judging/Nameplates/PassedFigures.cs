namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Figures that stand side by side between a label and its own figure.</summary>
/// <param name="To">The token behind the last.</param>
/// <param name="Cost">Dividers before them.</param>
/// <param name="Values">What they say; nothing for those that no field holds.</param>
internal sealed record Passed(int To, int Cost, IReadOnlyList<PlacedValue> Values);

/// <summary>Finds the figures that a label is read past, each with its unit and none twice: the 9 VA of COIL 9 VA 24 V, the 9 VA 60 HZ of COIL 9 VA 60 HZ 24 V, the 3 W of CLOCK 3 W 120 V.</summary>
internal sealed class PassedFigures(PlateText plate, Lexicon lexicon, ValueReader reader, FigureReach reach)
{
    /// <summary>A kind of figure that a label is read past.</summary>
    /// <param name="Units">Its units.</param>
    /// <param name="Field">Its field; null where none of the family holds it.</param>
    private sealed record Kind(UnitSet Units, Field? Field);

    /// <summary>All of them that begin with the token behind a label.</summary>
    public IEnumerable<Passed> Behind(int label, int at, PlateLabel said)
    {
        List<Kind> kinds = [.. said.Past.Select(lexicon.FieldOf).Select(field => new Kind(lexicon.UnitsOf(field), field))];
        if (said.PastUnits.Count > 0) kinds.Add(new(new(said.PastUnits), null));
        return Behind(label, at, kinds);
    }

    private IEnumerable<Passed> Behind(int before, int at, IReadOnlyList<Kind> kinds)
    {
        if (kinds.Count == 0 || !plate.Is(at, TokenKind.Number) || !plate.SameLine(at)) yield break;
        foreach (var kind in kinds)
        {
            foreach (var to in reach.Ends(at).Select(end => reach.UnitEnd(kind.Units, end)).OfType<int>())
            {
                if (Gaps.FromLabel(plate, before, at, to) is not { } cost || Says(kind, at, to) is not { } said) continue;
                yield return new(to, cost, said);
                foreach (var more in Behind(at, to, [.. kinds.Where(other => other != kind)])) yield return new(more.To, cost + more.Cost, [.. said, .. more.Values]);
            }
        }
    }

    /// <summary>What a figure says, nothing where no field holds it; null where it is none of its field's.</summary>
    private IReadOnlyList<PlacedValue>? Says(Kind kind, int from, int to) =>
        kind.Field is not { } field ? [] : reader.Read(field, plate.Slice(from, to), null) is { } text ? [new(field, text, new Stretch(from, to))] : null;
}
