namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Finds two figures of which the second stands in brackets and the unit behind both, or behind each: 10(6) A, 16 A (4 A).</summary>
internal sealed class BracketSearch(PlateText plate, Lexicon lexicon, ValueReader reader, FigureReach reach)
{
    /// <summary>All such pairs.</summary>
    public IEnumerable<Placement> All()
    {
        for (var from = 0; from < plate.Count; from++)
        {
            foreach (var (first, inBrackets) in lexicon.Bracketed)
            {
                if (At(from, first, inBrackets) is { } pair) yield return pair;
            }
        }
    }

    private Placement? At(int from, Field first, Field other)
    {
        if (!plate.Is(from, TokenKind.Number)) return null;
        var at = reach.UnitEnd(first, from + 1) ?? from + 1;
        if (!plate.Is(at, TokenKind.Number) || !plate.SameLine(at) || plate.Gap(at).Trim() is not "(" || reach.UnitEnd(other, at + 1) is not { } to) return null;
        var unit = plate.Slice(at + 1, to).ToString();
        if (!Closes(at + 1, to) || reader.Read(first, plate.Slice(from, from + 1), unit) is not { } text || reader.Read(other, plate.Slice(at, at + 1), unit) is not { } inBrackets) return null;
        return new(from, to, LabelStands.Nowhere, 0, new PlacedValue(first, text, new Stretch(from, to)), new PlacedValue(other, inBrackets, new Stretch(from, to)));
    }

    /// <summary>Whether the bracket closes before the unit or behind it.</summary>
    private bool Closes(int unit, int to) => plate.Gap(unit).Trim() is ")" || plate.Behind(to) is [')', ..];
}
