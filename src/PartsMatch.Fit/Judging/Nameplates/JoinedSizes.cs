namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Takes back sizes of which three or more are joined by X: 7/8 X 5/8 X 7/8 ODF. Two are those of a label; which of three ports each is differs from maker to maker, and only what reads a row as a whole knows its order.</summary>
internal static class JoinedSizes
{
    /// <summary>Takes those out of the placements that have a size out of such a row.</summary>
    public static void TakeFrom(List<Placement> all, PlateText plate, Lexicon lexicon, FigureReach reach)
    {
        if (lexicon.Sizes.Count == 0) return;
        var inRow = new bool[plate.Count];
        for (var at = 0; at < plate.Count; at++)
        {
            if (End(plate, lexicon, reach, at) is { } end) inRow.AsSpan(at..end).Fill(true);
        }

        all.RemoveAll(placement => !IsWhole(placement) && Array.IndexOf(inRow, true, placement.From, placement.To - placement.From) >= 0 && placement.Values.Any(value => lexicon.Sizes.Contains(value.Field)));

        bool IsWhole(Placement placement) => (placement.From == 0 || !inRow[placement.From] || !inRow[placement.From - 1]) && (placement.To == plate.Count || !inRow[placement.To - 1] || !inRow[placement.To]);
    }

    /// <summary>The token behind a row of three or more figures; null when none begins here.</summary>
    private static int? End(PlateText plate, Lexicon lexicon, FigureReach reach, int from)
    {
        var (count, at) = (0, from);
        while (reach.Ends(at) is [.., var figure])
        {
            count++;
            var end = UnitEnd(lexicon, reach, figure) ?? figure;
            if (!plate.IsBy(end)) return count > 2 ? end : null;
            at = end + 1;
        }

        return count > 2 ? at - 1 : null;
    }

    private static int? UnitEnd(Lexicon lexicon, FigureReach reach, int figure)
    {
        foreach (var field in lexicon.Sizes)
        {
            if (reach.UnitEnd(field, figure) is { } unit) return unit;
        }

        return null;
    }
}
