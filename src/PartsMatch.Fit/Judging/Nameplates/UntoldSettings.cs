namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Takes back a setting that was read before its label where another one stands behind it, and nothing on the plate but units and joints behind their figures, which never stand before them, tells on which side its labels stand: 5 TON 180 PSI MWP 450 PSI.</summary>
internal static class UntoldSettings
{
    /// <summary>The choice with neither of such two figures.</summary>
    /// <param name="plate">The plate.</param>
    /// <param name="lexicon">The words.</param>
    /// <param name="reach">How far figures reach.</param>
    /// <param name="choice">What was chosen.</param>
    /// <param name="all">All placements that there are.</param>
    public static Choice TakenBack(PlateText plate, Lexicon lexicon, FigureReach reach, Choice choice, IReadOnlyList<Placement> all)
    {
        var settings = lexicon.UnlessOthers.Values.SelectMany(fields => fields).ToHashSet();
        var behind = choice.Certain.Where(one => one is { Stands: LabelStands.Behind, Values.Count: > 0 }).ToList();
        var untold = behind.FindAll(one => settings.Contains(one.Values[0].Field) && behind.TrueForAll(other => other == one || lexicon.Sizes.Contains(other.Values[0].Field) || IsUnitBehind(plate, reach, other)));
        foreach (var one in untold)
        {
            if (all.FirstOrDefault(own => own is { Stands: LabelStands.Before, Cost: 0, Values.Count: > 0 } && own.Values[0].Field == one.Values[0].Field && one.From < own.From && own.From < one.To && one.To < own.To && choice.Certain.All(other => other == one || other.To <= own.From || own.To <= other.From)) is not { } own) continue;
            choice = choice with { Certain = [.. choice.Certain.Where(other => other != one)], Doubtful = [.. choice.Doubtful, [one, own]] };
        }

        return choice;
    }

    /// <summary>5 TON, 2 TON (7 KW), CAPACITY 5 TONS: a figure with its unit behind it.</summary>
    private static bool IsUnitBehind(PlateText plate, FigureReach reach, Placement one) =>
        Enumerable.Range(one.From, one.To - one.From).SelectMany(reach.Ends).Any(figure => reach.UnitEnd(one.Values[0].Field, figure) is { } unit && (unit == one.To || plate.Is(unit, TokenKind.Number)));
}
