namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Reads figures that stand side by side without labels because everybody knows their order: 115/1/60, 208-230/1/60, 230-1-50; or with that of the last: 1075/3SPD.</summary>
internal sealed class GroupSearch(PlateText plate, Lexicon lexicon, ValueReader reader, FigureReach reach)
{
    /// <summary>All groups.</summary>
    public IEnumerable<Placement> All()
    {
        if (lexicon.Groups.Count + lexicon.Pairs.Count == 0) yield break;
        for (var from = 0; from < plate.Count; from++)
        {
            if (plate.RunsOn(from)) continue;
            foreach (var to in reach.Ends(from))
            {
                var isWhole = plate.BeginsChunk(from) && (to == plate.Count || plate.BeginsChunk(to));
                foreach (var group in lexicon.Groups)
                {
                    if (isWhole && At(from, to, group) is { } placement) yield return placement;
                }

                foreach (var pair in lexicon.Pairs)
                {
                    if (LabelOf(pair[^1], from, to) is not { } label || At(from, to, pair) is not { } placement) continue;
                    if (plate.BeginsChunk(from)) yield return Labelled(placement, from, label.End);
                    foreach (var first in LabelsBefore(pair[0], from, to)) yield return Labelled(placement, first, label.End);
                }
            }
        }
    }

    private Match? LabelOf(Field last, int from, int to) =>
        plate.Words.LongestLabel(to, last) is { } label && Gaps.ToLabel(plate, from, to, label.End) is 0 ? label : null;

    /// <summary>The RPM of RPM 1075/3SPD.</summary>
    private IEnumerable<int> LabelsBefore(Field first, int from, int to) =>
        plate.Words.Ending(from).Where(label => label.Word.Announces(first) && Gaps.FromLabel(plate, label.From, from, to) is 0).Select(label => label.From);

    private static Placement Labelled(Placement group, int from, int to) =>
        new(from, to, from == group.From ? LabelStands.Behind : LabelStands.Nowhere, 0, [.. group.Values.Select(value => value with { Where = [new(from, to)] })]);

    /// <summary>The last figures are one each; all before them belong to the first field, 208-230/460-3-60.</summary>
    private Placement? At(int from, int to, List<Field> group)
    {
        var rest = plate.Slice(from, to);
        if (!rest.ContainsAny('/', '-')) return null;
        var where = new Stretch(from, to);
        var sign = '\0';
        var placed = new List<PlacedValue>();
        for (var last = group.Count - 1; last >= 0; last--)
        {
            var figure = rest;
            if (last > 0)
            {
                if (rest.LastIndexOfAny('/', '-') is not (> 0 and var at) || (sign != '\0' && rest[at] != sign)) return null;
                sign = rest[at];
                figure = rest[(at + 1)..].Trim();
                rest = rest[..at].TrimEnd();
            }

            if (reader.Read(group[last], figure, null) is not { } text || (last == 0 && AreAlike(group, figure))) return null;
            placed.Add(new(group[last], text, where));
        }

        return new(from, to, LabelStands.Nowhere, 0, placed);
    }

    /// <summary>50/60 are two frequencies, and not 50 V at 60 Hz.</summary>
    private bool AreAlike(List<Field> group, ReadOnlySpan<char> first)
    {
        foreach (var other in group.Skip(1))
        {
            if (lexicon.UsualOf(other) is { } usual && reader.Read(other, first, null) is { } text && other.Form.ReadAny(text).Value is { } value && usual.Holds(value)) return true;
        }

        return false;
    }
}
