namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Says what was read of a plate, and what was not.</summary>
internal sealed class PlateReport(PlateText plate, Lexicon lexicon, ValueReader reader, Choice choice)
{
    private const int LongestQuote = 40;
    private static readonly Source OnePlateOneValue = new("A plate has one value for a field, or one a rating row with / or - between", SourceStatus.Practice);

    private readonly bool[] used = new bool[plate.Count];
    private readonly List<ReadField> fields = [];
    private readonly List<Contradiction> contradictions = [];
    private readonly List<Complaint> complaints = [];

    /// <summary>All findings.</summary>
    public PlateFindings Findings()
    {
        foreach (var group in Taken().OrderBy(group => group.Key.Place)) Settle(group.Key, [.. group]);
        foreach (var run in choice.Doubtful) Doubt(run);
        foreach (var cut in choice.Cut) Complain(cut);
        foreach (var unread in choice.Certain.Concat(choice.Doubtful.SelectMany(run => run)).Select(placement => placement.Unread).OfType<Unread>()) Complain(unread);
        var names = Names();
        return new(fields, Leftovers(), contradictions, complaints) { Names = names, Doubted = Doubted() };
    }

    /// <summary>All that the plate says, by its fields. What one word says is taken whole or not at all: of SPNO and SPNC, apart on one plate, neither the action nor the one pole.</summary>
    private ILookup<Field, PlacedValue> Taken()
    {
        List<IReadOnlyList<PlacedValue>> said = [.. choice.Certain.Select(Yielded)];
        var byField = said.SelectMany(values => values).ToLookup(value => value.Field);
        var differ = byField.Where(group => group.Skip(1).Any() && !group.Key.Form.JoinsSeveral && TextsOf(group.Key, [.. group]).Count > 1).Select(group => group.Key).ToHashSet();
        return differ.Count == 0 ? byField : said.SelectMany(values => values.Where(value => differ.Contains(value.Field) || !values.Any(other => differ.Contains(other.Field) && other.Where.SequenceEqual(value.Where)))).ToLookup(value => value.Field);
    }

    /// <summary>What a placement says beside the others: the watts in are the motor's power only where no other are given.</summary>
    private IReadOnlyList<PlacedValue> Yielded(Placement placement) =>
        placement.YieldsTo is { } other && choice.Certain.Any(one => one.YieldsTo is null && one.Values.Any(value => value.Field == placement.Values[0].Field)) ? [placement.Values[0] with { Field = other }, .. placement.OthersStay ? placement.Values.Skip(1) : []] : placement.Values;

    /// <summary>The texts of a field that differ, without those that only say less than another.</summary>
    private IReadOnlyList<string> TextsOf(Field field, IReadOnlyList<PlacedValue> values) =>
        values is [var only] ? [only.Text] : lexicon.Finest(field, [.. values.Select(value => value.Text).Distinct()]);

    /// <summary>Takes a field's value, unless the plate gives two that differ.</summary>
    private void Settle(Field field, IReadOnlyList<PlacedValue> values)
    {
        var texts = TextsOf(field, values);
        if (texts.Count > 1 && field.Form.JoinsSeveral && reader.Read(field, string.Join(", ", texts), null) is { } all) texts = [all];
        if (texts.Count > 1 && AreOne(field, texts)) texts = [texts[0]];
        if (texts.Count > 1)
        {
            contradictions.Add(new([field.Name], $"{field.Label}: the plate's text says {string.Join(" and also ", texts)}; neither is taken.", OnePlateOneValue));
            return;
        }

        var spans = new List<TextSpan>(1);
        foreach (var (from, to) in values is [{ Where: [_] where }] ? where : (IEnumerable<Stretch>)values.SelectMany(value => value.Where).Distinct().OrderBy(stretch => stretch.From))
        {
            used.AsSpan(from..to).Fill(true);
            spans.Add(plate.Span(from, to));
        }

        fields.Add(new(field, texts[0], spans) { Mended = plate.MendedIn(spans) });
    }

    private static bool AreOne(Field field, IReadOnlyList<string> texts) => texts.Skip(1).All(other => RepeatedFigures.SaysAgain(field, texts[0], other));

    private void Doubt(IReadOnlyList<Placement> run)
    {
        var values = run.SelectMany(placement => placement.Values).ToList();
        if (values.Count == 0) return;
        var given = Quote(run[0].From, run.Max(placement => placement.To));
        var ways = string.Join(" or ", values.Select(value => $"{value.Field.Label} {value.Text}").Distinct().Take(3));
        complaints.Add(new(ComplaintCode.Ambiguous, values[0].Field.Name, given, $"“{given}” can be read in several ways ({ways}); none is taken. Write the unit, label or sign beside each figure."));
    }

    /// <summary>Complains of a label whose figure cannot be, once a field, unless the plate says the field's value elsewhere.</summary>
    private void Complain(Unread unread)
    {
        var (field, figure) = (unread.Label.Field, unread.Figure);
        if (fields.Exists(read => read.Field == field) || complaints.Exists(complaint => complaint.Field == field.Name) || contradictions.Exists(contradiction => contradiction.Fields.Contains(field.Name))) return;
        var typed = Quote(figure.From, figure.To);
        complaints.Add(new(ComplaintCode.Unreadable, field.Name, typed, $"{field.Label}: {(plate.IsAtStop(figure.From) ? AtStop(typed) : reader.Wrong(field, plate.Slice(figure.From, figure.To), unread.Label.Unit, typed))}."));
    }

    private static string AtStop(string typed) => $"the stop before “{typed}” may be a decimal point, or belong to the word before it; write 0.{typed}, or leave a space";

    /// <summary>Complains of a figure that can be read in part only.</summary>
    private void Complain(Placement cut)
    {
        var (from, to) = (cut.From, cut.To);
        while (CutFigures.IsParted(plate, from)) from--;
        while (CutFigures.IsParted(plate, to)) to++;
        var (field, given) = (cut.Values[0].Field, Quote(from, to));
        if (fields.TrueForAll(read => read.Field != field)) complaints.Add(new(ComplaintCode.Unreadable, field.Name, given, $"{field.Label}: “{given}” cannot be read as a whole, and no part of it is taken."));
    }

    /// <summary>What such a part is called, the longest first, where no field has taken it.</summary>
    private List<TextSpan> Names()
    {
        var names = new List<TextSpan>();
        for (var from = 0; from < plate.Count; from++)
        {
            var end = from;
            foreach (var word in plate.AllWords[from])
            {
                if (word.Node.IsName && IsFree(used, from, word)) end = word.End;
            }

            if (end == from) continue;
            used.AsSpan(from..end).Fill(true);
            names.Add(plate.Span(from, end));
        }

        return names;
    }

    /// <summary>Fields that the plate does not say, and is not silent on either: what a stranger announces is its own.</summary>
    private List<Field> Doubted()
    {
        var told = (bool[])used.Clone();
        foreach (var placement in choice.Certain.Where(placement => placement.Values.Count == 0)) told.AsSpan(placement.From..placement.To).Fill(true);
        var doubted = contradictions.SelectMany(contradiction => contradiction.Fields).Concat(complaints.Select(complaint => complaint.Field)).ToHashSet();
        for (var from = 0; from < plate.Count; from++)
        {
            foreach (var word in plate.AllWords[from])
            {
                if (word.Node.Words.Count > 0 && IsFree(told, from, word)) doubted.UnionWith(word.Node.Words.Select(value => value.Field.Name));
            }
        }

        return doubted.Count == 0 ? [] : [.. lexicon.Shape.Fields.Where(field => doubted.Contains(field.Name) && fields.TrueForAll(read => read.Field != field))];
    }

    private static bool IsFree(bool[] taken, int from, Match word) => !taken.AsSpan(from..word.End).Contains(true);

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
    private bool GoesOn(int at) => plate.SameLine(at) && (!plate.BeginsChunk(at) || plate.Gap(at).IndexOfAny(",;|¦") < 0);

    private string Quote(int from, int to)
    {
        var text = plate.Span(from, to).Text;
        return text.Length <= LongestQuote ? text : $"{text[..LongestQuote]}…";
    }
}
