namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>A value that begins with some token.</summary>
/// <param name="To">The token behind it.</param>
/// <param name="Values">The value; two for a figure by a figure, 1/2 X 4.</param>
internal readonly record struct Found(int To, params IReadOnlyList<PlacedValue> Values);

/// <summary>Finds the values of a given field that begin with a given token.</summary>
internal sealed class ValueSearch(PlateText plate, Lexicon lexicon, IReadOnlyList<Match>[] matches, ValueReader reader, FigureReach reach)
{
    /// <summary>Letters behind a frame's number that do not touch it: FR 56 C.</summary>
    private const int LongestSuffix = 2;

    /// <summary>All values of a label's field that begin with a token.</summary>
    public IEnumerable<Found> At(int from, LabelEntry label)
    {
        if (from >= plate.Count) return [];
        return label.Field.Form.ValueType == typeof(string) ? Wordings(from, label)
            : plate.Is(from, TokenKind.Number) ? Figures(from, label).Concat(Words(from, label.Field))
            : Words(from, label.Field);
    }

    private IEnumerable<Found> Words(int from, Field field)
    {
        foreach (var match in matches[from])
        {
            foreach (var word in match.Node.Words)
            {
                if (word.Field == field && reader.Read(field, word.Value, null) is { } text) yield return new(match.End, new PlacedValue(field, text, new Stretch(from, match.End)));
            }
        }
    }

    private IEnumerable<Found> Wordings(int from, LabelEntry label)
    {
        var end = plate.ChunkEnd(from);
        if (reader.Read(label.Field, plate.Slice(from, end).ToString().ToUpperInvariant(), null) is { } text) yield return new(end, new PlacedValue(label.Field, text, new Stretch(from, end)));
    }

    private IEnumerable<Found> Figures(int from, LabelEntry label)
    {
        foreach (var end in reach.Ends(from))
        {
            foreach (var to in UnitEnds(end, label.Field).Prepend(end))
            {
                if (reader.Read(label.Field, plate.Slice(from, to), to == end ? label.Unit : null) is { } text) yield return new(to, new PlacedValue(label.Field, text, new Stretch(from, to)));
            }

            if (label.Label.By is { } second)
            {
                foreach (var pair in By(from, end, label, lexicon.FieldOf(second))) yield return pair;
            }
        }
    }

    /// <summary>Where a figure may end with what stands behind it: 230 V, 115 V / 230 V, 48Y, FR 56 C, CAP 5/370 V.</summary>
    private IEnumerable<int> UnitEnds(int end, Field field)
    {
        if (reach.UnitEnd(field, end) is { } unit)
        {
            yield return unit;
            if (plate.Is(unit, TokenKind.Number) && Gaps.JoinsFigures(plate.Gap(unit))) yield return reach.UnitEnd(field, unit + 1) ?? unit + 1;
        }
        else if (lexicon.Tails.TryGetValue(field, out var tail))
        {
            if (reach.UnitEnd(lexicon.TailUnits, end) is { } tailUnit && tail.Units.Length > 0) yield return tailUnit;
        }
        else if (lexicon.UnitsOf(field).Count == 0 && plate.Is(end, TokenKind.Word) && plate.SameLine(end))
        {
            var tight = plate.Gap(end).IsEmpty;
            if (tight || (plate.Tokens[end].Length <= LongestSuffix && matches[end].All(match => match.Node.Labels.Count == 0))) yield return end + 1;
        }
    }

    /// <summary>1/2 X 4: a figure of the label's field and one of another; a unit behind the second is meant for both.</summary>
    private IEnumerable<Found> By(int from, int end, LabelEntry label, Field other)
    {
        var by = reach.UnitEnd(label.Field, end) ?? end;
        if (!(plate.IsWord(by, "x") || plate.IsWord(by, "by") || plate.Is(by, TokenKind.Sign) && plate.Slice(by, by + 1) is "×")) yield break;
        foreach (var last in reach.Ends(by + 1))
        {
            var to = reach.UnitEnd(other, last) ?? last;
            var unit = to > last ? plate.Slice(last, to).ToString() : label.Unit;
            var first = reader.Read(label.Field, plate.Slice(from, by), unit);
            var second = reader.Read(other, plate.Slice(by + 1, to), unit);
            if (first is not null && second is not null)
            {
                yield return new(to, new PlacedValue(label.Field, first, new Stretch(from, by)), new PlacedValue(other, second, new Stretch(by + 1, to)));
            }
        }
    }
}
