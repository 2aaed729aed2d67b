namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Tells whether what stands behind a figure is its unit or the label of the next one: of COIL 9 VA 24 V it is a unit, of COIL 24 VA 9 a label.</summary>
internal sealed class UnitsBehind(PlateText plate, Lexicon lexicon, ValueReader reader, FigureReach reach)
{
    /// <summary>Whether a figure behind a label that is no unit itself has another field's unit, and is none of the label's.</summary>
    /// <param name="from">The figure.</param>
    /// <param name="end">The token behind it.</param>
    /// <param name="label">The label.</param>
    public bool IsOthers(int from, int end, LabelEntry label)
    {
        if (label.Unit is not null || lexicon.UnitsOf(label.Field).IsEmpty || end >= plate.Count || !plate.SameLine(end) || reach.UnitEnd(label.Field, end) is not null) return false;
        return OthersEnd(from, end) is { } unit && !BeginsOther(end, unit) && (!IsLabel(end, unit) || EndsInUnit(WordEnd(end, unit), label.Label));
    }

    /// <summary>The token behind the unit that another field reads a figure with, or that no field of the family has, as the W beside a coil; null where none stands there.</summary>
    private int? OthersEnd(int from, int end)
    {
        foreach (var field in reach.IsUnitOfAny(end) ? lexicon.Shape.Fields : [])
        {
            if (reach.UnitEnd(field, end) is { } unit && reader.Read(field, plate.Slice(from, unit), null) is not null) return unit;
        }

        return reach.UnitEnd(lexicon.UnitsOfAny, end);
    }

    /// <summary>The C of C/O 35 is no unit, nor are the HP of HP CUT-OUT 400; the VA of VA HOLDING and VA INRUSH are one.</summary>
    private bool BeginsOther(int at, int unit) => plate.Words[at].Exists(match => match.End > unit && !IsOfUnit(match.Node, at, unit));

    /// <summary>The token behind a unit with the word that belongs to it: VA, VA HOLDING.</summary>
    private int WordEnd(int at, int unit) => plate.Words[at].Where(match => match.End > unit).Select(match => match.End).Append(unit).Max();

    private bool IsOfUnit(WordNode node, int at, int unit) => node.Labels.Select(label => label.Field).Append(node.AlikeTo?.Field).Any(field => field is not null && reach.UnitEnd(field, at) == unit);

    private bool IsLabel(int at, int unit) => plate.Words[at].Exists(match => match.End == unit && match.Node.Labels.Count > 0);

    /// <summary>Whether a row of figures, each with a unit behind it, ends in one: the plate puts its units behind its figures. One that ends in a figure, or in a hole where one stood, has them before.</summary>
    private bool EndsInUnit(int at, PlateLabel label)
    {
        while (plate.Is(at, TokenKind.Number) && plate.SameLine(at))
        {
            if (reach.Ends(at).Select(end => SaidEnd(end, label) ?? OthersEnd(at, end)).LastOrDefault(end => end is not null) is not { } unit) return false;
            at = unit;
        }

        return !plate.Is(at, TokenKind.Burnt);
    }

    /// <summary>The token behind the DC of COIL 9 VA 24 V DC; null where no such word stands there.</summary>
    private int? SaidEnd(int at, PlateLabel label) =>
        label.SaidBehind is { } said && at < plate.Count && plate.SameLine(at) ? plate.Words.Longest(at, node => node.Words.Exists(word => word.Field.Name == said.Name))?.End : null;
}
