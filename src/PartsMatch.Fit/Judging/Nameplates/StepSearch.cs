namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Reads figures that stand behind the names of steps: HI 1075 LO 825 RPM, HP HIGH 1/3 LOW 1/6. Neither figure is the field's value without the other.</summary>
internal sealed class StepSearch(PlateText plate, Lexicon lexicon, ValueReader reader)
{
    /// <summary>No motor has more speeds.</summary>
    private const int MostSteps = 8;

    private sealed record Steps(int To, string Figures);

    /// <summary>All such rows.</summary>
    public IEnumerable<Placement> All()
    {
        for (var at = 0; at < plate.Count; at++)
        {
            if (Step(at) is not null && From(at) is { } steps && steps.To < plate.Count && plate.SameLine(steps.To))
            {
                foreach (var label in Labels(steps.To))
                {
                    foreach (var placement in Read(label, steps, at, label.End, LabelStands.Behind)) yield return placement;
                }
            }

            foreach (var label in Labels(at))
            {
                if (Step(label.End) is null || !plate.SameLine(label.End) || From(label.End) is not { } behind) continue;
                foreach (var placement in Read(label, behind, at, behind.To, LabelStands.Before)) yield return placement;
            }
        }
    }

    private IEnumerable<Placement> Read(Match label, Steps steps, int begin, int end, LabelStands stands) =>
        from entry in label.Node.Labels
        where lexicon.TakesSteps(entry.Field)
        let text = reader.Read(entry.Field, steps.Figures, entry.Unit)
        where text is not null
        select new Placement(begin, end, stands, 0, new PlacedValue(entry.Field, text, new Stretch(begin, end)));

    /// <summary>Two steps or more, each with its figure, on one line.</summary>
    private Steps? From(int from)
    {
        var figures = new SortedDictionary<int, string>();
        WordNode? behindEach = null;
        var at = from;
        while (figures.Count < MostSteps && Step(at) is { End: var figure } step && plate.Is(figure, TokenKind.Number) && plate.SameLine(figure) && (at == from || plate.SameLine(at)))
        {
            if (!figures.TryAdd(step.Node.Step!.Value, plate.Slice(figure, figure + 1).ToString())) return null;
            at = figure + 1;

            // HI 1075 RPM LO 825 RPM: the unit stands behind each; RPM HI 1075 LO 825 A HI 2.1: the A begins another row.
            if (Labels(at).LastOrDefault(label => Step(label.End) is not null) is not { Node: { } node } unit) continue;
            if (figures.Count > 1 && node != behindEach) break;
            behindEach = node;
            at = unit.End;
        }

        return figures.Count > 1 ? new(at, string.Join(" / ", figures.Values)) : null;
    }

    private Match? Step(int at) => plate.Words.Longest(at, node => node.Step is not null);

    private IEnumerable<Match> Labels(int at) => plate.Words[at].Where(match => match.Node.Labels.Count > 0);
}
