namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Reads labels in a row with their figures in a row: V/PH/HZ 230/1/60, and a line of labels above a line of figures.</summary>
internal sealed class RowSearch(PlateText plate, ValueSearch values, ValueReader reader)
{
    /// <summary>No plate has more labels in one row.</summary>
    private const int MostLabels = 12;

    private sealed record Label(int From, int To, IReadOnlyList<LabelEntry> Entries);

    /// <summary>All rows.</summary>
    public IEnumerable<Placement> All()
    {
        for (var at = 0; at < plate.Count; at++)
        {
            if (LabelAt(at) is not { End: var second } || second == plate.Count || !plate.SameLine(second) || LabelAt(second) is null) continue;
            if (IsBehindSlash(second) && Slashed(at) is { } row) yield return row;
            if (!plate.SameLine(at) && Lines(at) is { } lines) yield return lines;
        }
    }

    private Placement? Slashed(int from)
    {
        var labels = Labels(from, IsBehindSlash);
        var at = labels[^1].To;
        if (!plate.Is(at, TokenKind.Number) || Gaps.FromLabel(plate, from, at, at + 1) is not { } cost) return null;
        var parts = plate.Slice(at, at + 1).ToString().Split('/');
        if (parts.Length != labels.Count) return null;
        var placed = labels.Zip(parts, (label, part) => label.Entries
            .Select(entry => (entry.Field, Text: reader.Read(entry.Field, part, entry.Unit)))
            .Where(pair => pair.Text is not null)
            .Select(pair => new PlacedValue(pair.Field, pair.Text!, new Stretch(label.From, label.To), new Stretch(at, at + 1)))
            .FirstOrDefault()).OfType<PlacedValue>().ToList();
        return placed.Count == labels.Count ? new(from, at + 1, LabelStands.Before, cost, placed) : null;
    }

    private Placement? Lines(int from)
    {
        var labels = Labels(from, plate.SameLine);
        var at = labels[^1].To;
        if (at == plate.Count || plate.SameLine(at)) return null;
        var placed = new List<PlacedValue>();
        foreach (var label in labels)
        {
            if (at == plate.Count || (placed.Count > 0 && !plate.SameLine(at))) return null;
            var end = plate.ChunkEnd(at);
            var value = label.Entries.SelectMany(entry => values.At(at, entry).Where(found => found.To == end && found.Second is null).Select(found => new PlacedValue(entry.Field, found.Text, new Stretch(at, end)))).FirstOrDefault();
            if (value is null) return null;
            placed.Add(value with { Where = [new(label.From, label.To), .. value.Where] });
            at = end;
        }

        return at == plate.Count || !plate.SameLine(at) ? new(from, at, LabelStands.Before, 0, placed) : null;
    }

    private bool IsBehindSlash(int at) => plate.SameLine(at) && plate.Gap(at).Trim() is "/";

    private Match? LabelAt(int at) => plate.Words.Longest(at, node => node.Labels.Count > 0);

    /// <summary>The labels that follow each other from a token on, each the longest there.</summary>
    private List<Label> Labels(int from, Func<int, bool> goesOn)
    {
        var labels = new List<Label>();
        var at = from;
        while (at < plate.Count && labels.Count < MostLabels && (at == from || goesOn(at)))
        {
            if (LabelAt(at) is not { } label) break;
            labels.Add(new(at, label.End, label.Node.Labels));
            at = label.End;
        }

        return labels;
    }
}
