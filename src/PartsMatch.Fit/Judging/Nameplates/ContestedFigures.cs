namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>A label between two figures that may both be its own, and both be another field's by their units: 480 V COIL 240 V.</summary>
/// <remarks>A label takes the figure right behind it, where the plate then says as much. Where it may as well be one of a plate that puts its labels behind (240 LRA 120 V COIL 600 V), neither is taken.</remarks>
internal sealed class ContestedFigures(PlateText plate, Lexicon lexicon, ValueReader reader, FigureReach reach, ValueSearch values)
{
    /// <summary>The field that the figure before a label is by its unit, where the label has one of its own right behind it; null where it has none, or the figure can be no other's.</summary>
    public Field? OtherOf(LabelEntry label, int from, Stretch labelAt) => values.At(labelAt.To, label).Exists(own => IsOwn(labelAt, own)) ? lexicon.ByUnit.FirstOrDefault(other => other != label.Field && Before(other, from, labelAt) is not null) : null;

    /// <summary>Both ways of reading such a stretch as a whole, so that neither is taken, where what stands right before it has its label behind, and nothing behind tells which is meant.</summary>
    public IEnumerable<Placement> EitherWay(LabelEntry label, int from, Stretch labelAt, string text, Field other, IReadOnlyList<Placement> found)
    {
        if (Before(other, from, labelAt) is not { } before || !found.Any(one => IsLabelledBehind(one, from))) yield break;
        foreach (var own in values.At(labelAt.To, label))
        {
            if (!IsOwn(labelAt, own) || IsTold(label.Field, own.To) || reach.IsBare(labelAt.To, own.To) || reader.Read(other, plate.Slice(labelAt.To, own.To), null) is not { } behind) continue;
            Stretch first = new(from, labelAt.From), last = new(labelAt.To, own.To);
            yield return new(from, own.To, LabelStands.Nowhere, 0, new(label.Field, text, new Stretch(from, labelAt.To)), new(other, behind, last));
            yield return new(from, own.To, LabelStands.Nowhere, 0, new(label.Field, own.Text, new Stretch(labelAt.From, own.To)), new(other, before, first));
        }
    }

    /// <summary>The figure before a label by its own unit, which may be the beginning of the label: 14 of 14 VA INRUSH.</summary>
    private string? Before(Field other, int from, Stretch labelAt) => reach.Ends(from).Select(end => reach.UnitEnd(other, end)).FirstOrDefault(end => end >= labelAt.From && end < labelAt.To) is { } unit ? reader.Read(other, plate.Slice(from, unit), null) : null;

    private bool IsOwn(Stretch labelAt, Found own) => Gaps.FromLabel(plate, labelAt.From, labelAt.To, own.To) is 0 && !(reach.IsBare(labelAt.To, own.To) && reach.IsUnitOfAny(own.To));

    /// <summary>240 LRA: a figure with its label, and not merely its unit, behind it.</summary>
    private bool IsLabelledBehind(Placement one, int end) =>
        one.To == end && plate.SameLine(end) && one is { Stands: LabelStands.Behind, Values: [{ } value, ..] } && !lexicon.UnitsOf(value.Field).IsEmpty && !reach.Ends(one.From).Exists(figure => reach.UnitEnd(value.Field, figure) == end);

    /// <summary>Whether what stands in turns with a field follows: the 60 HZ of 600 V COIL 120 V 60 HZ.</summary>
    private bool IsTold(Field field, int at) => lexicon.InTurns.Any(turns => turns.First == field && reach.Ends(at).Exists(end => reach.UnitEnd(turns.Second, end) is not null));
}
