namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Takes back figures that were read with the label behind them only because they cannot be what the label before them announces.</summary>
/// <remarks>
/// PF 1.5 SF 99: no power factor is 1.5, but that does not make it a service factor. The label before keeps its figure, and complains of it.
/// On a plate that puts its labels behind elsewhere too (1/4 HP 1075 RPM V 60 HZ), the label before has lost its figure, and nothing is taken back.
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
        var certain = choice.Certain.OrderBy(placement => placement.From).ToList();
        for (var at = 0; at < certain.Count; at++)
        {
            var placement = certain[at];
            if (placement.Stands != LabelStands.Behind || placement.Values.Count == 0 || !plate.BeginsChunk(placement.To - 1)) continue;
            if (announced[placement.From].FirstOrDefault(before => IsImpossible(plate, reader, before.Unread!) && !IsCovered(certain, at, before.From)) is { } owner) certain[at] = owner;
        }

        var writesLabelsBehind = certain.Exists(placement => placement.Stands == LabelStands.Behind && placement.Values.Count > 0);
        return writesLabelsBehind ? choice : choice with { Certain = certain };
    }

    /// <summary>Labels of choices announce words, not figures.</summary>
    private static bool IsImpossible(PlateText plate, ValueReader reader, Unread unread) =>
        unread.Label.Field.Form.Choices.Count == 0 && reader.Read(unread.Label.Field, plate.Slice(unread.Figure.From, unread.Figure.To), unread.Label.Unit) is null;

    private static bool IsCovered(List<Placement> certain, int except, int token) =>
        certain.Where((placement, index) => index != except && placement.Values.Count > 0 && placement.From <= token && token < placement.To).Any();
}
