namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Finds labels with figures that cannot be read with them: HP 1/0, RPM 1e999, RPM 107_. They are complained of, and show which figure is not another label's.</summary>
internal sealed class UnreadSearch(PlateText plate, ValueSearch values, FigureReach reach)
{
    /// <summary>What such a pair is worth: more than the habit of a plate, far less than anything read.</summary>
    private const int Worth = 2;

    /// <summary>What a label with a hole is worth less than one with a figure.</summary>
    private const int LessThanRead = 1;

    /// <summary>All such pairs. Some of them can be read after all; then the reading is worth more.</summary>
    public IEnumerable<Placement> All()
    {
        for (var at = 0; at < plate.Count; at++)
        {
            if (!plate.BeginsChunk(at) || plate.RunsOn(at)) continue;
            if (IsFigure(at))
            {
                if (Behind(at) is { } behind) yield return behind;
            }
            else if (Before(at) is { } before)
            {
                yield return before;
            }
        }
    }

    /// <summary>HP 1/0, HP1/0: the label, and what is left of its chunk or the whole next one; or a figure with the unit of something else, which keeps its label from the figure before it.</summary>
    private Placement? Before(int from)
    {
        Match label = default;
        foreach (var word in plate.Words[from])
        {
            if (Announces(from, word)) label = word;
        }

        if (label.Node is null || !IsFigure(label.End) || !plate.SameLine(label.End)) return null;
        var to = plate.ChunkEnd(label.End);
        if (label.Node.Labels[0] is var first && !IsUnit(from, label.End, first.Field) && values.OthersEnd(label.End, first) is { } unit && Gaps.FromLabel(plate, from, label.End, unit) is 0) return new(from, unit, LabelStands.Before, LessThanRead) { Unread = new(first, new(label.End, unit)) };
        return Gaps.FromLabel(plate, from, label.End, to) is null ? null : Pair(label, new(label.End, to), from, to, LabelStands.Before);
    }

    /// <summary>AT announces nothing by itself, ODF nothing behind it, and of HP CUT-OUT [burnt] only the last words do.</summary>
    private bool Announces(int from, Match word)
    {
        foreach (var one in word.Node.Labels)
        {
            if (one.Label.BareBehind.Count == 0 && !one.Label.OnlyBehind && !plate.Words.EndsInLabel(from, word, one.Field)) return true;
        }

        return false;
    }

    /// <summary>2 TON -40/+10 F: whether a label is the unit of the figure before it.</summary>
    private bool IsUnit(int from, int to, Field field) => reach.UnitEnd(field, from) == to && reach.BareBefore(0, from) is not null;

    /// <summary>1/0 HP, 1e999RPM: the whole chunk and the label behind it, or the label at its end.</summary>
    private Placement? Behind(int from)
    {
        var end = plate.ChunkEnd(from);
        for (var at = from + 1; at < end; at++)
        {
            foreach (var last in plate.Words[at])
            {
                if (last.End == end && IsBehind(last)) return Pair(last, new(from, at), from, end, LabelStands.Behind);
            }
        }

        if (end == plate.Count || !plate.SameLine(end)) return null;
        var label = plate.Words[end].FindLast(IsBehind);
        if (label.Node is null || (label.End < plate.Count && !plate.BeginsChunk(label.End)) || Gaps.ToLabel(plate, from, end, label.End) is null) return null;
        return Pair(label, new(from, end), from, label.End, LabelStands.Behind);
    }

    private static bool IsBehind(Match match) => match.Node.Labels.Exists(label => !label.Label.OnlyBefore);

    private bool IsFigure(int at) => plate.Is(at, TokenKind.Number) || plate.Is(at, TokenKind.Burnt);

    /// <summary>A hole is what its label announces, as a figure would be: HZ [burnt] 60 A [burnt] is no 60 A. A figure that cannot be is more likely another label's.</summary>
    private Placement Pair(Match label, Stretch figure, int from, int to, LabelStands stands) =>
        new(from, to, stands, plate.Is(figure.From, TokenKind.Burnt) && figure.To == figure.From + 1 ? LessThanRead : Cover.WorthOnly(to - from, Worth)) { Unread = new(label.Node.Labels[0], figure) };
}
