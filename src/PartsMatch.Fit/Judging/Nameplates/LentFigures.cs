namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Takes back figures that were read with the label behind them only because they cannot be what the label before them announces.</summary>
/// <remarks>
/// PF 1.5 SF 99: no power factor is 1.5, but that does not make it a service factor. The label before keeps its figure, and complains of it.
/// What tells such a run from a plate whose first label has lost its figure (V 1/4 HP 1075 RPM 60 HZ) is the figure behind it, that no label is left for.
/// A lone one without such a figure is taken back, too, unless the plate puts its labels behind elsewhere (1/4 HP 1075 RPM V 60 HZ).
/// </remarks>
internal static class LentFigures
{
    /// <summary>The choice without such readings.</summary>
    /// <param name="plate">The plate.</param>
    /// <param name="reader">Reads values.</param>
    /// <param name="choice">What was chosen.</param>
    /// <param name="all">All placements that there are.</param>
    public static Choice TakenBack(PlateText plate, ValueReader reader, Choice choice, IReadOnlyList<Placement> all)
    {
        var announced = all.Where(placement => placement is { Unread: not null, Stands: LabelStands.Before }).ToLookup(placement => placement.Unread!.Figure.From);
        var chosen = choice.Certain.OrderBy(placement => placement.From).ToList();
        var certain = chosen.ToList();
        for (var at = 0; at < certain.Count; at++)
        {
            if (!IsSpacedBehind(plate, certain[at])) continue;
            if (announced[certain[at].From].FirstOrDefault(before => IsImpossible(plate, reader, before.Unread!) && !Covers(certain, before.From) && !HasBurntFigure(plate, certain, before.From)) is { } owner) certain[at] = owner;
        }

        // Several in a row without such a figure show the plate's habit, and then a lone one follows it.
        GiveBack(run => run > 1);
        if (certain.Exists(placement => placement.Stands == LabelStands.Behind && placement.Values.Count > 0)) GiveBack(_ => true);
        return choice with { Certain = certain };

        void GiveBack(Func<int, bool> isLongEnough)
        {
            for (var first = 0; first < certain.Count; first++)
            {
                if (certain[first] == chosen[first]) continue;
                var last = first;
                while (last + 1 < certain.Count && certain[last + 1] != chosen[last + 1] && chosen[last + 1].From == chosen[last].To) last++;
                var behind = chosen[last].To;
                var figureBehind = plate.Is(behind, TokenKind.Number) && !Covers(chosen, behind);
                for (var at = first; !figureBehind && isLongEnough(1 + last - first) && at <= last; at++) certain[at] = chosen[at];
                first = last;
            }
        }
    }

    /// <summary>Whether a label has its own figure before it, though that cannot be read: 1/_ HP 1075 RPM.</summary>
    private static bool HasBurntFigure(PlateText plate, List<Placement> placements, int label) =>
        plate.Is(label - 1, TokenKind.Burnt) && placements.Exists(placement => placement.Unread is not null && placement.Stands == LabelStands.Behind && placement.From < label && label < placement.To);

    private static bool IsSpacedBehind(PlateText plate, Placement placement) =>
        placement.Stands == LabelStands.Behind && placement.Values.Count > 0 && plate.BeginsChunk(placement.To - 1);

    /// <summary>Labels of choices announce words, not figures.</summary>
    private static bool IsImpossible(PlateText plate, ValueReader reader, Unread unread) =>
        unread.Label.Field.Form.Choices.Count == 0 && reader.Read(unread.Label.Field, plate.Slice(unread.Figure.From, unread.Figure.To), unread.Label.Unit) is null;

    private static bool Covers(List<Placement> placements, int token) =>
        placements.Exists(placement => placement.Unread is null && placement.From <= token && token < placement.To);
}
