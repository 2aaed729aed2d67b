namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Gives a figure between two labels to the one before it, where that one has no other and the one behind has a second figure of its own: A 2.1 CAP 370V is 2.1 A, and a capacitor of which only the volts stand there.</summary>
/// <remarks>
/// Covering alone would take the 2.1 for microfarads, for then only the A is left over. Where the label before has taken the figure before it, V 115 A 2.1 CAP 370V, the same is asked of that one:
/// the figures go back one by one when the row begins with a label that has none.
/// </remarks>
internal static class BetweenLabels
{
    /// <summary>The choice with such figures at the label before them; what the label behind has left is left over.</summary>
    /// <param name="choice">What was chosen.</param>
    /// <param name="all">All placements that there are.</param>
    public static Choice GivenBack(Choice choice, IReadOnlyList<Placement> all)
    {
        var between = choice.Certain.Where(placement => placement.Main is { Stands: LabelStands.Behind } main && main.From == placement.From).ToList();
        if (between.Count == 0) return choice;
        var byEnd = all.Where(one => one is { Stands: LabelStands.Before, Values.Count: > 0 }).ToLookup(one => one.To);
        foreach (var placement in between)
        {
            if (Row(placement, placement.Main!.To, choice.Certain, byEnd) is { } row) choice = With(choice, row);
        }

        return choice;
    }

    /// <summary>Which placements are taken back, each with what the label before it makes of its figure; null when no label before is without a figure, or one may announce several fields.</summary>
    private static List<(Placement Taken, Placement Owner)>? Row(Placement placement, int to, IReadOnlyList<Placement> certain, ILookup<int, Placement> byEnd)
    {
        List<Placement> owners = [.. Enumerable.Range(placement.From + 1, to - placement.From - 1).SelectMany(end => byEnd[end]).Where(one => one.From < placement.From)];
        if (owners is not [var owner, ..] || !owners.TrueForAll(owner.SaysAs)) return null;
        var others = Overlapping(certain, owner).Where(other => other != placement).ToList();
        if (others.Count == 0) return [(placement, owner)];
        return others is [{ Stands: LabelStands.Behind } other] && other.To == placement.From && Row(other, owner.From + 1, certain, byEnd) is { } row ? [.. row, (placement, owner)] : null;
    }

    /// <summary>What was in doubt only because a label might have had either figure is so no longer.</summary>
    private static Choice With(Choice choice, List<(Placement Taken, Placement Owner)> row)
    {
        List<Placement> certain = [.. choice.Certain.Except(row.Select(pair => pair.Taken)), .. row.Select(pair => pair.Owner)];
        var doubtful = new List<IReadOnlyList<Placement>>();
        foreach (var run in choice.Doubtful)
        {
            List<Placement> left = [.. run.Where(one => !Overlapping(certain, one).Any())];
            if (left.Count < run.Count && left.TrueForAll(one => Overlapping(left, one).All(other => other == one))) certain.AddRange(left);
            else doubtful.Add(left);
        }

        return choice with { Certain = certain, Doubtful = doubtful };
    }

    private static IEnumerable<Placement> Overlapping(IEnumerable<Placement> placements, Placement one) => placements.Where(other => other.From < one.To && one.From < other.To);
}
