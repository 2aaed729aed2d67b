namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Finds two fields whose figures stand in turns, each with its unit: COIL 120 V 60 HZ 110 V 50 HZ is one coil for two frequencies, 208 V 60 HZ 240 V 60 HZ one for a span of volts.</summary>
internal sealed class TurnSearch(PlateText plate, Lexicon lexicon, ValueReader reader, FigureReach reach)
{
    /// <summary>Volts of one coil lie no farther apart than its frequencies do, 60 to 50, with slack (practice): 24 V 60 HZ 240 V 50 HZ are those of a coil and of contacts.</summary>
    private const double Widest = 1.25;

    /// <summary>No coil's plate gives more.</summary>
    private const int MostTurns = 4;

    private sealed record Turn(int To, string First, string Second)
    {
        /// <summary>Whether only the first field's label shows what it is: COIL 120/60, COIL 24 V 60.</summary>
        public bool NeedsLabel { get; init; }

        /// <summary>Whether it says something by itself, for a figure in it has no unit; others are read one by one.</summary>
        public bool IsOne { get; init; }
    }

    /// <summary>All placements of two turns or more, or of one that its label alone makes one, with the first field's label where it has one; without, only where its unit says what it is.</summary>
    public IEnumerable<Placement> All()
    {
        for (var from = 0; from < plate.Count; from++)
        {
            foreach (var (first, second) in lexicon.InTurns)
            {
                var turns = Turns(first, second, from);
                for (var count = turns.Count; count > 0; count--)
                {
                    var needsLabel = turns[..count].Exists(turn => turn.NeedsLabel);
                    if ((count == 1 && !turns[0].IsOne) || Read(first, second, turns[..count]) is not { } values) continue;
                    foreach (var (start, end, stands, cost) in Labelled(first, from, turns[count - 1].To, needsLabel))
                    {
                        var all = new Stretch(start, end);
                        yield return new(start, end, stands, cost, new PlacedValue(first, values.Firsts, all), new PlacedValue(second, values.Seconds, all));
                    }
                }
            }
        }
    }

    /// <summary>Turns that follow one another, as long as they can be of one coil.</summary>
    private List<Turn> Turns(Field first, Field second, int from)
    {
        var turns = new List<Turn>();
        for (var at = from; turns.Count < MostTurns && (turns.Count == 0 || GoesOn(at)) && One(first, second, at) is { } next && turns.TrueForAll(one => AreNear(one.First, next.First)); at = next.To) turns.Add(next);
        return turns;
    }

    /// <summary>What the turns say: 220 V 50 HZ 230 V 50 HZ 240 V 60 HZ is 220-230 V at the one frequency and 240 V at the other.</summary>
    private (string Firsts, string Seconds)? Read(Field first, Field second, List<Turn> turns)
    {
        var groups = turns.GroupBy(turn => turn.Second).ToList();
        var firsts = string.Join(" / ", groups.Select(group => string.Join(" - ", group.Select(turn => turn.First).Distinct())));
        return reader.Read(first, firsts, null) is { } one && reader.Read(second, string.Join(" / ", groups.Select(group => group.Key)), null) is { } other ? (one, other) : null;
    }

    private Turn? One(Field first, Field second, int from)
    {
        foreach (var end in reach.Ends(from))
        {
            if (reach.UnitEnd(first, end) is not { } at)
            {
                if (Slashed(first, second, from, end) is { } slashed) return slashed;
                continue;
            }

            if (!GoesOn(at) || reader.Read(first, plate.Slice(from, at), null) is not { } text) continue;
            foreach (var last in reach.Ends(at))
            {
                if (reach.UnitEnd(second, last) is { } to && reader.Read(second, plate.Slice(at, to), null) is { } beside) return new(to, text, beside);
                if (!reach.IsUnitOfAny(last) && Usual(second, plate.Slice(at, last)) is { } usual) return new(last, text, usual) { NeedsLabel = !lexicon.ByUnit.Contains(first), IsOne = true };
            }
        }

        return null;
    }

    /// <summary>The 120/60 of COIL 120/60, the 24/50-60 of COIL 24/50-60; but not 50/60, which are two frequencies.</summary>
    private Turn? Slashed(Field first, Field second, int from, int end)
    {
        var figures = plate.Slice(from, end);
        for (var at = 1; at < figures.Length - 1; at++)
        {
            if (figures[at] is '/' or '-' && Usual(second, figures[(at + 1)..]) is { } beside && Usual(second, figures[..at]) is null && reader.Read(first, figures[..at], null) is { } text) return new(reach.UnitEnd(second, end) ?? end, text, beside) { NeedsLabel = true, IsOne = true };
        }

        return null;
    }

    /// <summary>A figure without a unit, where it is a usual one: 60, 50/60.</summary>
    private string? Usual(Field field, ReadOnlySpan<char> figure) =>
        reader.Read(field, figure, null) is { } text && lexicon.UsualOf(field) is { } usual && field.Form.ReadAny(text).Value is { } value && usual.Holds(value) ? text : null;

    private static bool AreNear(string one, string other) =>
        Quantities.TradeNumber.TryRead(one, fractions: false, signed: false, out var first, out _) && Quantities.TradeNumber.TryRead(other, fractions: false, signed: false, out var second, out _) && Quantities.Within.Ratio(first.Double, second.Double, Widest);

    private bool GoesOn(int at) => plate.Is(at, TokenKind.Number) && plate.SameLine(at) && Gaps.BetweenHalves(plate.Gap(at));

    private IEnumerable<(int From, int To, LabelStands Stands, int Cost)> Labelled(Field field, int from, int to, bool needsLabel)
    {
        if (!needsLabel && lexicon.ByUnit.Contains(field)) yield return (from, to, LabelStands.Nowhere, 0);
        foreach (var (at, label) in plate.Words.Ending(from))
        {
            if (Announces(label, field) && Gaps.FromLabel(plate, at, from, to) is { } cost) yield return (at, to, LabelStands.Before, cost);
        }

        if (to == plate.Count) yield break;
        foreach (var label in plate.Words[to].Where(label => Announces(label, field)))
        {
            if (Gaps.ToLabel(plate, from, to, label.End) is { } cost) yield return (from, label.End, LabelStands.Behind, cost);
        }
    }

    private static bool Announces(Match match, Field field) => match.Node.Labels.Exists(label => label.Field == field && label.Label.Says is null);
}
