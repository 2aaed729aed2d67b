namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Finds figures between which and their label a figure of another field stands, each with its unit: 230 V 60 HZ MOTOR, CLOCK 60 HZ 120 V.</summary>
internal sealed class PastSearch(PlateText plate, Lexicon lexicon, ValueReader reader, FigureReach reach)
{
    /// <summary>So many tokens behind the second figure its unit may end, and the label begin.</summary>
    private const int LongestUnit = 5;

    private readonly PassedFigures passed = new(plate, reader, reach);
    private List<Placement> simple = [];

    /// <summary>Adds them to the placements.</summary>
    public void AddTo(List<Placement> placements)
    {
        if (lexicon.Past.Count == 0) return;
        simple = placements;
        for (var at = 0; at < plate.Count; at++)
        {
            if (plate.RunsOn(at)) continue;
            foreach (var match in plate.Words[at]) AddLabelFirst(at, match);
            if (plate.Is(at, TokenKind.Number)) AddFigureFirst(at);
        }
    }

    /// <summary>CLOCK 60 HZ 120 V, COIL 9 VA 60 HZ 24 VDC: the label first, where the figure before it is not its own.</summary>
    private void AddLabelFirst(int from, Match match)
    {
        foreach (var label in match.Node.Labels)
        {
            foreach (var between in passed.Behind(from, match.End, label.Past))
            {
                foreach (var (to, values) in Ends(between.To, label))
                {
                    if (Gaps.FromLabel(plate, match.End, between.To, to) is not { } cost || !plate.SameLine(between.To)) continue;
                    var own = values[0] with { Where = [new(from, match.End), .. values[0].Where] };
                    simple.Add(new(from, to, LabelStands.Before, Cover.MoreThanPlacement + cost + between.Cost, [own, .. values.Skip(1), .. between.Values]));
                }
            }
        }
    }

    /// <summary>The ways in which a label's own figure ends that begins with a token: 24 V, and 24 VDC with what the word behind says.</summary>
    private IEnumerable<(int To, IReadOnlyList<PlacedValue> Values)> Ends(int at, LabelEntry label)
    {
        foreach (var end in reach.Ends(at))
        {
            if (reach.UnitEnd(label.Field, end) is { } unit && reader.Read(label.Field, plate.Slice(at, unit), null) is { } text) yield return (unit, [new(label.Field, text, new Stretch(at, unit))]);
            if (label.Label.SaidBehind is not { } said || end == plate.Count || !plate.SameLine(end) || reader.Read(label.Field, plate.Slice(at, end), null) is not { } bare) continue;
            var other = lexicon.FieldOf(said.Name);
            foreach (var word in plate.Words[end].Where(match => match.Node.Words.Exists(one => one.Field == other && reader.Read(other, one.Value, null) == said.Text))) yield return (word.End, [new(label.Field, bare, new Stretch(at, word.End)), new(other, said.Text, new Stretch(end, word.End))]);
        }
    }

    /// <summary>230 V 60 HZ MOTOR: between a figure and its label stands one of another field, each with its unit.</summary>
    private void AddFigureFirst(int from)
    {
        foreach (var field in lexicon.Past)
        {
            foreach (var end in reach.Ends(from))
            {
                if (reach.UnitEnd(field, end) is not { } second || second == plate.Count || !plate.SameLine(second)) continue;
                foreach (var last in reach.Ends(second))
                {
                    AddPast(field, from, second, last);
                    AddAlone(field, from, second, last);
                }
            }
        }
    }

    private void AddPast(Field field, int from, int second, int last)
    {
        for (var at = last + 1; at < Math.Min(last + LongestUnit, plate.Count); at++)
        {
            foreach (var match in plate.Words[at])
            {
                if (match.Node.Labels.Find(label => label.Field == field && label.Label.Past.Count > 0) is not { } label || Gaps.ToLabel(plate, from, at, match.End) is not { } cost) continue;
                foreach (var other in label.Label.Past.Select(lexicon.FieldOf))
                {
                    if (reach.UnitEnd(other, last) != at || reader.Read(field, plate.Slice(from, second), null) is not { } text || reader.Read(other, plate.Slice(second, at), null) is not { } between) continue;
                    simple.Add(new(from, match.End, LabelStands.Behind, cost, new(field, text, new Stretch(from, second), new Stretch(at, match.End)), new(other, between, new Stretch(second, at))));
                }
            }
        }
    }

    /// <summary>230 V 60 HZ, each with its unit and nothing between.</summary>
    private void AddAlone(Field field, int from, int second, int last)
    {
        if (!lexicon.Alone.TryGetValue(field, out var label) || reach.UnitEnd(label.Past, last) is not { } end || Gaps.ToLabel(plate, from, second, end) is not 0) return;
        if (reader.Read(field, plate.Slice(from, second), null) is not { } text || reader.Read(label.Past, plate.Slice(second, end), null) is not { } beside) return;
        simple.Add(new(from, end, LabelStands.Nowhere, 0, new(field, text, new Stretch(from, second)), new(label.Past, beside, new Stretch(second, end))) { YieldsTo = label.YieldsTo, OthersStay = true });
    }

    /// <summary>Takes back those that stand right behind what they never do. RES 40 A 240 V 60 HZ, RES 40 A 240 V CLOCK 60 HZ 120 V: right behind amps, and nothing between, volts are the contact's and not the clock's, unless the clock's label can be no other's.</summary>
    public void YieldBehind()
    {
        foreach (var (field, label) in lexicon.Alone)
        {
            var ends = simple.Where(placement => placement.Values.Any(value => label.NeverBehind.Contains(value.Field))).Select(placement => placement.To).ToHashSet();
            for (var at = 0; at < plate.Count; at++) ends.UnionWith(reach.Ends(at).SelectMany(end => label.NeverBehind.Select(amps => reach.UnitEnd(amps, end) ?? 0)));
            bool IsBehind(Placement one) => one.Values is [{ } first, ..] && first.Field == field && ends.Contains(one.From) && plate.SameLine(one.From) && Gaps.FromLabel(plate, one.From - 1, one.From, one.To) is 0;
            bool MayBe(Field other, string text) => reader.Read(other, text, null) is not null;
            bool AreOthers(int at) => simple.Exists(one => one.From <= at && at < one.To && one.Values.Count > 0 && one.Values[0].Field != field && one.Values[0].Field != label.YieldsTo);
            bool HasMore(int from) => Enumerable.Range(from, plate.Count - from).TakeWhile(plate.SameLine).Any(at => plate.Is(at, TokenKind.Number) && reach.Ends(at).Exists(end => reach.UnitEnd(field, end) is not null) && !AreOthers(at));
            bool IsEitherWay(Placement one) => one is { Stands: LabelStands.Nowhere, OthersStay: false, Values: [_, { } other] } && other.Field == label.YieldsTo;
            var eitherWay = simple.FindAll(IsEitherWay).Select(one => one.From).ToHashSet();
            simple.RemoveAll(one => IsBehind(one) && one.Stands == LabelStands.Behind && !eitherWay.Contains(one.From) && HasMore(one.To) && MayBe(label.YieldsTo, one.Values[0].Text));
            for (var at = 0; at < simple.Count; at++)
            {
                if (simple[at] is not { OthersStay: true, Values: var values } alone || !IsBehind(alone) || reader.Read(label.YieldsTo, plate.Slice(values[0].Where[0].From, values[0].Where[0].To), null) is not { } text) continue;
                simple[at] = new(alone.From, alone.To, LabelStands.Nowhere, 0, [values[0] with { Field = label.YieldsTo, Text = text }, .. values.Skip(1)]);
            }
        }
    }
}
