using System.Globalization;

namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Finds every way in which some stretch of a plate can be read by itself.</summary>
internal sealed class PlacementSearch
{
    /// <summary>What speaks for a word with a figure in it: W1 is a terminal sooner than one watt.</summary>
    private const int OfOnePiece = 1;

    /// <summary>A unit, an X, a second figure of up to three tokens and its unit, and the same for a third: IN X 1-1/8 IN X 1/4 IN.</summary>
    private const int LongestSecond = 9;

    /// <summary>A shorter one may count contacts where plates have such counts: RELAY NO 2.</summary>
    private const int ShortestNumber = 3;

    private readonly PlateText plate;
    private readonly ValueReader reader;
    private readonly FigureReach reach;
    private readonly RepeatedFigures repeated;
    private readonly ValueSearch values;
    private readonly PastSearch past;
    private readonly UnitsBehind units;
    private readonly FreeWords free;
    private readonly ContestedFigures contested;
    private readonly FreeMinus minus;
    private readonly ToleranceSearch tolerances;
    private readonly Lexicon lexicon;
    private readonly List<Placement> placements = [];

    /// <summary>Prepares to search a plate.</summary>
    public PlacementSearch(PlateText plate, Lexicon lexicon, ValueReader reader, FigureReach reach)
    {
        (this.plate, this.lexicon, this.reader, this.reach) = (plate, lexicon, reader, reach);
        repeated = new(plate, reach);
        values = new(plate, lexicon, reader, reach, repeated);
        free = new(plate, lexicon, values);
        minus = new(plate, values, reader);
        past = new(plate, lexicon, reader, reach);
        units = new(plate, lexicon, reader, reach);
        contested = new(plate, lexicon, reader, reach);
        tolerances = new(plate, lexicon, reader);
    }

    /// <summary>All placements.</summary>
    public List<Placement> All()
    {
        for (var at = 0; at < plate.Count; at++)
        {
            if (!plate.RunsOn(at)) AddAt(at);
        }

        new RatingRun(plate, lexicon, reader, reach).AddTo(placements);
        past.AddTo(placements);
        repeated.AddTo(placements);
        new BareFigures(plate, lexicon, reader, reach, repeated).Settle(placements);
        new LentSettings(plate, lexicon, reach, repeated).TakeFrom(placements);
        contested.Settle(placements);
        past.YieldBehind();
        new TailSearch(plate, lexicon, reader, reach).AddTo(placements);
        new LabelSearch(plate).AddTo(placements);
        placements.AddRange(new RowSearch(plate, values, reader).All());
        placements.AddRange(new GroupSearch(plate, lexicon, reader, reach).All());
        placements.AddRange(new StepSearch(plate, lexicon, reader).All());
        placements.AddRange(new StepRows(plate, lexicon, reader).All());
        placements.AddRange(new StrangerFigures(plate, lexicon, reach).All());
        placements.AddRange(new BracketSearch(plate, lexicon, reader, reach).All());
        placements.AddRange(new TurnSearch(plate, lexicon, reader, reach).All());
        placements.AddRange(new MarkSearch(plate, lexicon, reader, reach).All());
        placements.AddRange(new UnreadSearch(plate, values, reach).All());
        JoinedSizes.TakeFrom(placements, plate, lexicon, reach);
        placements.RemoveAll(IsPart);
        for (var at = 0; at < placements.Count; at++) placements[at] = Denied.TakenBack(plate, lexicon, tolerances.Within(placements[at]));
        return placements;
    }

    /// <summary>Whether a reading begins or ends within a figure.</summary>
    private bool IsPart(Placement placement) =>
        CutFigures.IsTorn(plate, placement.From) || CutFigures.IsTorn(plate, placement.To) || reach.GoesOn(placement.From) || (placement.Values.Count > 0 && reach.IsSecondEnd(placement.From));

    private void AddAt(int from)
    {
        foreach (var match in plate.Words[from])
        {
            var node = match.Node;
            if (node.Labels.Count > 0) AddLabelFirst(from, match);
            if (node.Words.Count > 0) AddWordBeforeLabel(from, match);
            if (node.Free.Count > 0 && !AnnouncesFigure(from, match)) AddFree(from, match);
            if (node.IsFiller) placements.Add(new(from, match.End, LabelStands.Nowhere, Cover.Token * (match.End - from)));
            if (node.IsStranger || (node.IsNumbered && IsNumber(match.End))) AddStranger(from, match.End);
        }

        if (tolerances.At(from) is { } share) placements.Add(share);
        if (!plate.Is(from, TokenKind.Number)) return;
        AddFigureBeforeLabel(from);
        foreach (var (field, tail) in lexicon.Tails) AddUnlabelled(from, field, tail);
    }

    /// <summary>TEAO, 48Y, SPDT; not the NO of 1 POLE NO 12345 or of RELAY NC NO. 1234, which is a number's.</summary>
    private void AddFree(int from, Match match)
    {
        if (plate.IsWord(match.End - 1, "NO") && IsNumber(match.End))
        {
            AddStranger(match.End - 1, match.End);
            return;
        }

        if (free.Said(from, match) is { Count: > 0 } said) placements.Add(new(from, match.End, LabelStands.Nowhere, plate.HasFigures(from) ? -OfOnePiece : 0, [.. said.Select(word => Value(word, from, match.End))]));
    }

    /// <summary>RPM 1075, INS B, SHAFT 1/2 X 4.</summary>
    private void AddLabelFirst(int from, Match match)
    {
        foreach (var label in match.Node.Labels)
        {
            if (label.Label.OnlyBehind || (plate.Is(from - 1, TokenKind.Number) && plate.SameLine(from) && values.IsUsualTail(match.End, label.Field))) continue;
            foreach (var found in minus.Meant(match.End, label, values.At(match.End, label)))
            {
                if (Gaps.FromLabel(plate, from, match.End, found.To) is not { } cost || (reach.IsBare(match.End, found.To) && (!MayBeBare(label.Label, from, found.To) || units.IsOthers(match.End, found.To, label)))) continue;
                AddLabelled(label, new(from, match.End), match.End, found, LabelStands.Before, cost);
                if (label.Field.Form.JoinsSeveral) AddList(label.Field, found.To);
                if (label.Label.SaidBehind is { } said && found.To < plate.Count && plate.SameLine(found.To)) AddWithWord(label.Field, said, new(from, found.To), found.Text, cost);
            }
        }
    }

    /// <summary>Whether a word ends in the label of the figure right behind it, and the rest of it says as much: HIGH PRESSURE CUT-OUT 400 PSI.</summary>
    private bool AnnouncesFigure(int from, Match match)
    {
        foreach (var (begin, last) in plate.Words.Ending(match.End))
        {
            if (begin > from && last.Node.Labels.Exists(label => HasFigureBehind(match.End, label.Field)) && (match.Node.Labels.Count > 0 || plate.Words[from].Exists(head => head.End == begin && head.Node.Free.Exists(word => match.Node.Free.Exists(one => one.Field == word.Field))))) return true;
        }

        return false;
    }

    /// <summary>Whether a figure without a unit may stand at a label: 240 of FLA 16 AT 240, but not the 36 of OPENS AT 36 or of FLA 16 AT 36 F.</summary>
    private bool MayBeBare(PlateLabel label, int from, int to)
    {
        if (label.BareBehind.Count == 0) return true;
        if (reach.IsUnitOfAny(to) || from == 0 || !plate.SameLine(from)) return false;
        List<Field> fields = [.. label.BareBehind.Select(lexicon.FieldOf)];
        return reach.StandsBefore(placements, from, fields) || reach.StandsBehind(from, lexicon.UnitsRatedAt[lexicon.FieldOf(label.Field)]) || IsLabelEnd(from, fields);
    }

    /// <summary>125 VA PILOT DUTY: a label of one of some fields ends right before a token.</summary>
    private bool IsLabelEnd(int at, List<Field> fields) => plate.Words.Ending(at).Exists(before => before.Word.Node.Labels.Exists(label => fields.Contains(label.Field)));

    /// <summary>OIL: MO/AB, POE: words of one field that follow the one behind its label need no label of their own.</summary>
    private void AddList(Field field, int from)
    {
        for (var at = from; at < plate.Count && plate.SameLine(at) && Gaps.InList(plate.Gap(at)) && plate.Words.Longest(at, node => node.Words.Exists(word => word.Field == field)) is { } next; at = next.End)
        {
            placements.Add(new(at, next.End, LabelStands.Nowhere, 0, Value(next.Node.Words.Find(word => word.Field == field)!, at, next.End)));
        }
    }

    /// <summary>COIL 24 V DC: a word of another field right behind the figure.</summary>
    private void AddWithWord(Field field, NamedText said, Stretch labelled, string text, int cost)
    {
        var other = lexicon.FieldOf(said.Name);
        foreach (var match in plate.Words[labelled.To])
        {
            if (match.Node.Words.Find(one => one.Field == other && reader.Read(other, one.Value, null) == said.Text) is { } word && Gaps.ToLabel(plate, labelled.From, labelled.To, match.End) is 0) placements.Add(new(labelled.From, match.End, LabelStands.Before, cost, new(field, text, labelled), Value(word, labelled.To, match.End)));
        }
    }

    /// <summary>BALL BRG, CONT DUTY, F INS.</summary>
    private void AddWordBeforeLabel(int from, Match match)
    {
        if (match.End == plate.Count) return;
        foreach (var last in plate.Words[match.End])
        {
            if (last.Node.Labels.Count == 0 || Gaps.ToLabel(plate, from, match.End, last.End) is not { } cost) continue;
            foreach (var word in match.Node.Words)
            {
                if (IsBehindWords(last, word.Field)) placements.Add(new(from, last.End, LabelStands.Nowhere, cost, Value(word, from, last.End)));
            }
        }
    }

    private static bool IsBehindWords(Match word, Field field)
    {
        foreach (var label in word.Node.Labels)
        {
            if (label.Field == field && !label.Label.OnlyBehind) return true;
        }

        return false;
    }

    /// <summary>1/4 HP, 40 °C AMB, 4 POLE, 115 V / 230 V, 3/8 X 1/2 ODF: the label stands behind the figure, behind the figure's unit, or behind a second figure.</summary>
    private void AddFigureBeforeLabel(int from)
    {
        foreach (var end in reach.Ends(from))
        {
            for (var at = end; at <= end + LongestSecond && at < plate.Count; at++)
            {
                foreach (var match in plate.Words[at])
                {
                    if (match.Node.Labels.Count == 0 || Gaps.ToLabel(plate, from, at, match.End) is not { } cost) continue;
                    foreach (var label in match.Node.Labels)
                    {
                        if (label.Label.OnlyBefore) continue;

                        // 40 °C AMB: the unit stands before the label; 1380 1/min: the label is the end of the unit.
                        var unit = at > end ? reach.UnitEnd(label.Field, end) : null;
                        var isNext = at == end || unit == at || unit == match.End;
                        if (!isNext && label.Label.By is null) continue;
                        foreach (var found in values.At(from, label))
                        {
                            var belongs = found.Second is not null ? found.To == at : isNext && (found.To == at || found.To > match.End || (found.To == unit && unit == match.End));
                            if (belongs) AddLabelled(label, new(at, match.End), from, found, LabelStands.Behind, cost);
                        }
                    }
                }
            }
        }
    }

    /// <summary>10/370, 45+5/440: a whole chunk with a usual second figure behind its last slash.</summary>
    private void AddUnlabelled(int from, Field field, PlateTail tail)
    {
        if (!tail.NeedsNoLabel || !plate.BeginsChunk(from) || plate.ChunkEnd(from) != from + 1) return;
        var figures = plate.Slice(from, from + 1);
        var usual = double.TryParse(figures[(figures.LastIndexOf('/') + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out var figure) && tail.Usual.Contains(figure);
        if (usual && figures.Contains('/') && reader.Read(field, figures, null) is { } text) placements.Add(new(from, from + 1, LabelStands.Nowhere, 0, new PlacedValue(field, text, new Stretch(from, from + 1))));
    }

    private void AddLabelled(LabelEntry label, Stretch labelAt, int valueAt, Found found, LabelStands stands, int cost)
    {
        if (label.Label.NeverBefore is { } never && ((stands == LabelStands.Behind && HasFigureBehind(labelAt.To, lexicon.FieldOf(never))) || (stands == LabelStands.Before && label.Label.Unit is null && plate.Is(labelAt.From - 1, TokenKind.Number) && plate.SameLine(labelAt.From)))) return;
        if (label is { IsSymbol: true, Label.NeverBeside: { } beside } && WithLabel(label.Field, lexicon.FieldOf(beside), Math.Min(labelAt.From, valueAt), Math.Max(found.To, labelAt.To)) is { } others)
        {
            placements.Add(new(others.From, others.To, LabelStands.Nowhere, 0));
            return;
        }

        if (label.Label.NeverIn is { } unit && found.Text.EndsWith(unit, StringComparison.Ordinal)) return;
        var all = new Stretch(Math.Min(labelAt.From, valueAt), Math.Max(found.To, labelAt.To));
        var placed = new List<PlacedValue>(1);
        if (found.Second is { At: null } other)
        {
            placed.Add(new(label.Field, found.Text, all));
            placed.Add(new(other.Field, other.Text, all));
        }
        else if (found.Second is { At: { } by } second)
        {
            placed.Add(new(label.Field, found.Text, InOrder(new(valueAt, by), labelAt)));
            placed.Add(new(second.Field, second.Text, InOrder(new(by, found.ThirdAt ?? found.To), labelAt)));
            if (found.ThirdAt is { } at && label.Label.Third is { Says: var third }) placed.Add(new(lexicon.FieldOf(third.Name), third.Text, InOrder(new(at, found.To), labelAt)));
        }
        else
        {
            placed.Add(new(label.Field, found.Text, all));
        }

        if (label.Label.Says is { } says) placed.Add(new(lexicon.FieldOf(says.Name), says.Text, labelAt));
        placements.Add(new(all.From, all.To, stands, cost + Joins(valueAt, found.To), placed) { YieldsTo = label.Label.YieldsTo is { } yields ? lexicon.FieldOf(yields) : null });
    }

    /// <summary>Whether a figure with a unit of a field stands behind: In 0,95 A.</summary>
    private bool HasFigureBehind(int at, Field field) => plate.Is(at, TokenKind.Number) && plate.SameLine(at) && reach.FirstUnit(at, field) is not null;

    /// <summary>A figure of a field with another's label right before it, or right behind where that has no figure of its own: PILOT DUTY 125 VA; null where neither stands there.</summary>
    private Stretch? WithLabel(Field field, Field beside, int from, int to)
    {
        foreach (var (at, word) in plate.Words.Ending(from))
        {
            if (word.Announces(beside) && Gaps.FromLabel(plate, at, from, to) is 0) return new(at, to);
        }

        if (plate.Words.LongestLabel(to, beside) is not { } last || Gaps.ToLabel(plate, from, to, last.End) is not 0) return null;
        return HasFigureBehind(last.End, field) || last.Node.Labels.Exists(label => values.At(last.End, label).Count > 0) ? null : new(from, last.End);
    }

    /// <summary>What it costs to join figures that do not touch: with a label each they are two, HP 1/4, 1/3 HP, or LRA 14 3/4 HP.</summary>
    private int Joins(int from, int to)
    {
        var cost = 0;
        for (var at = from + 1; at < to; at++) cost += plate.BeginsChunk(at) && plate.Is(at, TokenKind.Number) && plate.Is(at - 1, TokenKind.Number) ? Cover.MoreThanPlacement : 0;
        return cost;
    }

    private static IReadOnlyList<Stretch> InOrder(Stretch one, Stretch other) => one.From < other.From ? [one, other] : [other, one];

    private PlacedValue Value(WordEntry word, int from, int to) => new(word.Field, reader.Read(word.Field, word.Value, null) ?? word.Value, new Stretch(from, to));

    /// <summary>Whether the number of a part begins with a token: 12345, AX-17, but no figure that has a unit, or a label behind it that reads it.</summary>
    private bool IsNumber(int at)
    {
        if (at == plate.Count || !plate.HasFigures(at) || plate.Words[at].Count > 0) return false;
        return !plate.Is(at, TokenKind.Number) || (plate.Slice(at, at + 1) is var figure && (figure.Length >= ShortestNumber || !lexicon.Knows($"{figure}NO")) && !figure.Contains('/') && reach.Ends(at).TrueForAll(end => !reach.IsUnitOfAny(end) && (end == plate.Count || plate.Words[end].TrueForAll(match => match.Node.Labels.TrueForAll(label => values.At(at, label).Count == 0)))));
    }

    /// <summary>SER 230A, TEST 46 BAR, NOT FOR INVERTER: the chunk with figures, or the word of the vocabulary, behind a word that announces what no field holds.</summary>
    private void AddStranger(int from, int at)
    {
        if (at == plate.Count || !plate.SameLine(at)) return;
        var chunkEnd = plate.ChunkEnd(at);
        if (Gaps.FromLabel(plate, from, at, chunkEnd) is null) return;
        var end = plate.HasFigures(at) ? chunkEnd : plate.Words[at].Where(match => match.Node.Free.Count > 0).Select(match => match.End).DefaultIfEmpty(0).Max();
        if (end > 0) placements.Add(new(from, end, LabelStands.Nowhere, 0));
        foreach (var unit in reach.Ends(at).Select(last => reach.UnitEnd(lexicon.UnitsOfAny, last)).OfType<int>().Where(unit => unit > end)) placements.Add(new(from, unit, LabelStands.Nowhere, 0));
    }
}
