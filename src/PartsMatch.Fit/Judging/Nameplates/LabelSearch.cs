namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Lengthens placements by a label of their field that stands on their other side: CLASS B INS, CAP 370 VAC 5 MFD, FLA 2.1 A.</summary>
internal sealed class LabelSearch(PlateText plate)
{
    /// <summary>Adds to the placements those that are longer by a label.</summary>
    public void AddTo(List<Placement> placements)
    {
        var count = placements.Count;
        for (var at = 0; at < count; at++)
        {
            var placement = placements[at];
            if (placement.Values is not [{ } value]) continue;
            foreach (var (from, label) in plate.Words.Ending(placement.From))
            {
                if (Announces(label, value.Field) && Gaps.FromLabel(plate, from, placement.From, placement.To) is { } cost) placements.Add(Widen(placement, from, placement.To, cost));
            }

            if (placement.To == plate.Count) continue;
            foreach (var label in plate.Words[placement.To])
            {
                if (Announces(label, value.Field) && Gaps.ToLabel(plate, placement.From, placement.To, label.End) is { } cost) placements.Add(Widen(placement, placement.From, label.End, cost));
            }
        }
    }

    private static bool Announces(Match match, Field field)
    {
        foreach (var label in match.Node.Labels)
        {
            if (label.Field == field && label.Label.Says is null) return true;
        }

        return false;
    }

    private static Placement Widen(Placement placement, int from, int to, int cost) =>
        new(from, to, placement.Stands, placement.Cost + cost, placement.Values[0] with { Where = [new(from, to)] });
}
