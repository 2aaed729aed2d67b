namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Says what was read of a plate, and what was not.</summary>
internal sealed class PlateReport(PlateText plate, Lexicon lexicon, ValueReader reader, IReadOnlyList<IReadOnlyList<Match>> matches, Choice choice)
{
    private const int LongestQuote = 40;
    private static readonly Source OnePlateOneValue = new("A plate has one value for a field, or one a rating row with / or - between", SourceStatus.Practice);

    private readonly bool[] used = new bool[plate.Count];
    private readonly bool[] spokenFor = new bool[plate.Count];
    private readonly List<ReadField> fields = [];
    private readonly List<Contradiction> contradictions = [];
    private readonly List<Complaint> complaints = [];

    /// <summary>All findings.</summary>
    public PlateFindings Findings()
    {
        foreach (var group in choice.Certain.SelectMany(placement => placement.Values).GroupBy(value => value.Field).OrderBy(group => Order(group.Key))) Settle(group.Key, [.. group]);
        foreach (var placement in choice.Certain.Concat(choice.Doubtful)) spokenFor.AsSpan(placement.From, placement.To - placement.From).Fill(true);
        Doubts();
        NamedButUnread();
        return new(fields, Leftovers(), contradictions, complaints);
    }

    private int Order(Field field) => lexicon.Shape.Fields.TakeWhile(other => other != field).Count();

    /// <summary>Takes a field's value, unless the plate gives two that differ.</summary>
    private void Settle(Field field, IReadOnlyList<PlacedValue> values)
    {
        var texts = values.Select(value => value.Text).Distinct().ToList();
        if (texts.Count > 1 && Lexicon.TakesSeveral(field) && reader.Read(field, string.Join(", ", texts), null) is { } all) texts = [all];
        if (texts.Count > 1)
        {
            contradictions.Add(new([field.Name], $"{field.Label}: the plate's text says {string.Join(" and also ", texts)}; neither is taken.", OnePlateOneValue));
            return;
        }

        var where = values.SelectMany(value => value.Where).Distinct().OrderBy(stretch => stretch.From).ToList();
        foreach (var at in where.SelectMany(stretch => Enumerable.Range(stretch.From, stretch.To - stretch.From))) used[at] = true;
        fields.Add(new(field, texts[0], [.. where.Select(stretch => plate.Span(stretch.From, stretch.To))]));
    }

    /// <summary>One complaint for each run of text that can be read in two ways.</summary>
    private void Doubts()
    {
        var to = 0;
        var run = new List<Placement>();
        foreach (var placement in choice.Doubtful.OrderBy(placement => placement.From).ThenBy(placement => placement.To))
        {
            if (placement.From >= to && run.Count > 0) Doubt(run, to);
            to = Math.Max(to, placement.To);
            run.Add(placement);
        }

        if (run.Count > 0) Doubt(run, to);
    }

    private void Doubt(List<Placement> run, int to)
    {
        var values = run.SelectMany(placement => placement.Values).ToList();
        var given = Quote(run[0].From, to);
        if (values.Count > 0)
        {
            var ways = string.Join(" or ", values.Select(value => $"{value.Field.Label} {value.Text}").Distinct().Take(3));
            complaints.Add(new(ComplaintCode.Ambiguous, values[0].Field.Name, given, $"“{given}” can be read in two ways ({ways}); neither is taken. Write the unit or label beside each figure."));
        }

        run.Clear();
    }

    /// <summary>Complains where a label stands beside a figure that it could not be read with: HP 1/0.</summary>
    private void NamedButUnread()
    {
        var named = fields.Select(field => field.Field.Name).Concat(contradictions.SelectMany(contradiction => contradiction.Fields)).Concat(complaints.Select(complaint => complaint.Field)).ToHashSet();
        for (var at = 0; at < plate.Count; at++)
        {
            var match = spokenFor[at] ? default : matches[at].LastOrDefault(match => match.Node.Labels.Count > 0);
            if (match.Node is null) continue;
            var label = match.Node.Labels[0];
            var behind = plate.BeginsChunk(at) && plate.Is(match.End, TokenKind.Number) && !spokenFor[match.End] && Gaps.FromLabel(plate, at, match.End, match.End + 1) is not null;
            var before = at > 0 && plate.BeginsChunk(at - 1) && plate.Is(at - 1, TokenKind.Number) && !spokenFor[at - 1] && Gaps.ToLabel(plate, at - 1, at, match.End) is not null;
            if (!(behind || before) || !named.Add(label.Field.Name)) continue;
            var (from, to) = behind ? (match.End, plate.ChunkEnd(match.End)) : (at - 1, at);
            var given = behind ? Quote(at, to) : Quote(from, match.End);
            complaints.Add(new(ComplaintCode.Unreadable, label.Field.Name, given, $"{label.Field.Label}: {reader.Wrong(label.Field, plate.Slice(from, to), label.Unit)}."));
        }
    }

    private List<TextSpan> Leftovers()
    {
        var leftovers = new List<TextSpan>();
        for (var at = 0; at < plate.Count; at++)
        {
            if (used[at]) continue;
            var to = at + 1;
            while (to < plate.Count && !used[to] && GoesOn(to)) to++;
            leftovers.Add(plate.Span(at, to));
            at = to - 1;
        }

        return leftovers;
    }

    /// <summary>What only a space or a sign parts is one leftover; a line or a divider ends it.</summary>
    private bool GoesOn(int at) => plate.SameLine(at) && plate.Gap(at).IndexOfAny(",;|¦") < 0;

    private string Quote(int from, int to)
    {
        var text = plate.Slice(from, to);
        return text.Length <= LongestQuote ? text.ToString() : $"{text[..LongestQuote]}…";
    }
}
