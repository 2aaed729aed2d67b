namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Finds every way in which some stretch of a plate can be read by itself.</summary>
internal sealed class PlacementSearch
{
    private readonly PlateText plate;
    private readonly IReadOnlyList<Match>[] matches;
    private readonly ValueReader reader;
    private readonly FigureReach reach;
    private readonly ValueSearch values;
    private readonly Lexicon lexicon;

    /// <summary>Prepares to search a plate.</summary>
    public PlacementSearch(PlateText plate, Lexicon lexicon, ValueReader reader)
    {
        (this.plate, this.lexicon, this.reader) = (plate, lexicon, reader);
        matches = [.. Enumerable.Range(0, plate.Count).Select(at => lexicon.Tree.At(plate, at))];
        reach = new(plate, lexicon);
        values = new(plate, lexicon, matches, reader, reach);
    }

    /// <summary>The words of the vocabulary that begin with each token.</summary>
    public IReadOnlyList<IReadOnlyList<Match>> Matches => matches;

    /// <summary>All placements.</summary>
    public IReadOnlyList<Placement> All()
    {
        var simple = Enumerable.Range(0, plate.Count).SelectMany(At).ToList();
        var whole = new TailSearch(plate, lexicon, reader, reach).Extend(simple);
        var labelled = new LabelSearch(plate, matches).Extend(whole);
        return [.. labelled.Concat(new RowSearch(plate, matches, values, reader).All())];
    }

    private IEnumerable<Placement> At(int from)
    {
        foreach (var match in matches[from])
        {
            foreach (var placement in Behind(from, match)) yield return placement;
            if (match.Node.Free.Count > 0) yield return new(from, match.End, LabelStands.Nowhere, 0, [.. match.Node.Free.Select(word => Value(word, from, match.End))]);
            foreach (var placement in WordsBeforeLabel(from, match)) yield return placement;
            if (match.Node.IsStranger && Stranger(from, match.End) is { } stranger) yield return stranger;
        }

        foreach (var placement in FiguresBeforeLabel(from)) yield return placement;
    }

    /// <summary>RPM 1075, INS B, SHAFT 1/2 X 4.</summary>
    private IEnumerable<Placement> Behind(int from, Match match)
    {
        if (match.Node.Labels.Count == 0 || match.End == plate.Count) yield break;
        foreach (var label in match.Node.Labels.Where(label => !label.Label.OnlyBehind))
        {
            foreach (var found in values.At(match.End, label))
            {
                if (Gaps.FromLabel(plate, from, match.End, found.To) is { } cost) yield return Labelled(label, new(from, match.End), found, LabelStands.Before, cost);
            }
        }
    }

    /// <summary>BALL BRG, CONT DUTY, F INS.</summary>
    private IEnumerable<Placement> WordsBeforeLabel(int from, Match match)
    {
        if (match.Node.Words.Count == 0 || match.End == plate.Count) yield break;
        foreach (var last in matches[match.End])
        {
            if (Gaps.ToLabel(plate, from, match.End, last.End) is not { } cost) continue;
            foreach (var word in match.Node.Words.Where(word => last.Node.Labels.Any(label => label.Field == word.Field && !label.Label.OnlyBehind)))
            {
                yield return new(from, last.End, LabelStands.Nowhere, cost, Value(word, from, last.End));
            }
        }
    }

    /// <summary>1/4 HP, 40 °C AMB, 4 POLE, 115 V / 230 V.</summary>
    private IEnumerable<Placement> FiguresBeforeLabel(int from)
    {
        foreach (var end in reach.Ends(from))
        {
            // The label behind the figure, or behind the figure's unit.
            for (var at = end; at <= end + 2 && at < plate.Count; at++)
            {
                foreach (var (match, label) in matches[at].SelectMany(match => match.Node.Labels.Select(label => (match, label))))
                {
                    if (at > end && reach.UnitEnd(label.Field, end) != at) continue;
                    if (Gaps.ToLabel(plate, from, at, match.End) is not { } cost) continue;
                    foreach (var found in values.At(from, label).Where(found => found.To == at || found.To > match.End))
                    {
                        yield return Labelled(label, new(at, Math.Max(found.To, match.End)), found, LabelStands.Behind, cost, from);
                    }
                }
            }
        }
    }

    private Placement Labelled(LabelEntry label, Stretch labelAt, Found found, LabelStands stands, int cost, int? start = null)
    {
        var from = start ?? labelAt.From;
        var to = Math.Max(found.To, labelAt.To);
        var placed = found.Values.Count == 1
            ? [found.Values[0] with { Where = [new(from, to)] }]
            : found.Values.Select(value => value with { Where = [.. value.Where.Append(labelAt).OrderBy(where => where.From)] }).ToList();
        if (label.Label.Says is { } says) placed.Add(new(lexicon.FieldOf(says.Name), says.Text, labelAt));
        return new(from, to, stands, cost, placed);
    }

    private PlacedValue Value(WordEntry word, int from, int to) => new(word.Field, reader.Read(word.Field, word.Value, null) ?? word.Value, new Stretch(from, to));

    /// <summary>SER 230A, NOT FOR INVERTER: the chunk with figures, or the word of the vocabulary, behind a word that announces what no field holds.</summary>
    private Placement? Stranger(int from, int at)
    {
        if (at == plate.Count || Gaps.FromLabel(plate, from, at, plate.ChunkEnd(at)) is null || !plate.SameLine(at)) return null;
        var chunkEnd = plate.ChunkEnd(at);
        var end = Enumerable.Range(at, chunkEnd - at).Any(token => plate.Is(token, TokenKind.Number)) ? chunkEnd
            : matches[at].Where(match => match.Node.Free.Count > 0).Select(match => match.End).DefaultIfEmpty(0).Max();
        return end == 0 ? null : new(from, end, LabelStands.Nowhere, 0);
    }
}
