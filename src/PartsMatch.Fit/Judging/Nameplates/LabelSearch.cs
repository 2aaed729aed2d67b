namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Lengthens placements by a label of their field that stands on their other side: CLASS B INS, CAP 370 VAC 5 MFD, FLA 2.1 A.</summary>
internal sealed class LabelSearch(PlateText plate, IReadOnlyList<Match>[] matches)
{
    /// <summary>The placements, and those that are longer by a label.</summary>
    public IReadOnlyList<Placement> Extend(IReadOnlyList<Placement> placements)
    {
        var before = Enumerable.Range(0, plate.Count)
            .SelectMany(at => matches[at].Where(match => match.Node.Labels.Count > 0).Select(match => (From: at, Match: match)))
            .ToLookup(label => label.Match.End);
        var longer = new List<Placement>();
        foreach (var placement in placements.Where(placement => placement.Values.Count == 1))
        {
            var field = placement.Values[0].Field;
            foreach (var label in before[placement.From].Where(label => Announces(label.Match, field)))
            {
                if (Gaps.FromLabel(plate, label.From, placement.From, placement.To) is { } cost) longer.Add(Widen(placement, label.From, placement.To, cost));
            }

            if (placement.To == plate.Count) continue;
            foreach (var match in matches[placement.To].Where(match => Announces(match, field)))
            {
                if (Gaps.ToLabel(plate, placement.From, placement.To, match.End) is { } cost) longer.Add(Widen(placement, placement.From, match.End, cost));
            }
        }

        return [.. placements, .. longer];
    }

    private static bool Announces(Match match, Field field) => match.Node.Labels.Any(label => label.Field == field && label.Label.Says is null);

    private static Placement Widen(Placement placement, int from, int to, int cost) =>
        new(from, to, placement.Stands, placement.Cost + cost, placement.Values[0] with { Where = [new(from, to)] });
}
