namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Finds figures and words with a label of their field before or behind them.</summary>
internal sealed class LabelledFigures(PlateText plate, Lexicon lexicon, ValueReader reader, FigureReach reach, ValueSearch values, List<Placement> placements)
{
    /// <summary>A unit, an X, a second figure of up to three tokens and its unit, and the same for a third: IN X 1-1/8 IN X 1/4 IN.</summary>
    private const int LongestSecond = 9;

    private readonly FreeMinus minus = new(plate, values, reader);
    private readonly UnitsBehind units = new(plate, lexicon, reader, reach);

    /// <summary>RPM 1075, INS B, SHAFT 1/2 X 4.</summary>
    public void AddBehind(int from, Match match)
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
            placements.Add(new(at, next.End, LabelStands.Nowhere, 0, reader.Placed(next.Node.Words.Find(word => word.Field == field)!, at, next.End)));
        }
    }

    /// <summary>COIL 24 V DC: a word of another field right behind the figure.</summary>
    private void AddWithWord(Field field, NamedText said, Stretch labelled, string text, int cost)
    {
        var other = lexicon.FieldOf(said.Name);
        foreach (var match in plate.Words[labelled.To])
        {
            if (match.Node.Words.Find(one => one.Field == other && reader.Read(other, one.Value, null) == said.Text) is { } word && Gaps.ToLabel(plate, labelled.From, labelled.To, match.End) is 0) placements.Add(new(labelled.From, match.End, LabelStands.Before, cost, new(field, text, labelled), reader.Placed(word, labelled.To, match.End)));
        }
    }

    /// <summary>1/4 HP, 40 °C AMB, 4 POLE, 115 V / 230 V, 3/8 X 1/2 ODF: the label stands behind the figure, behind the figure's unit, or behind a second figure.</summary>
    public void AddBefore(int from)
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
    public bool HasFigureBehind(int at, Field field) => plate.Is(at, TokenKind.Number) && plate.SameLine(at) && reach.FirstUnit(at, field) is not null;

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
}
