namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Finds two fields whose figures stand in turns, each with its unit: COIL 120 V 60 HZ 110 V 50 HZ is one coil for two frequencies.</summary>
internal sealed class TurnSearch(PlateText plate, Lexicon lexicon, List<Match>[] matches, ValueReader reader, FigureReach reach)
{
    /// <summary>Volts of one coil lie no farther apart than its frequencies do, 60 to 50, with slack (practice): 24 V 60 HZ 240 V 50 HZ are those of a coil and of contacts.</summary>
    private const double Widest = 1.25;

    private sealed record Turn(int To, string First, string Second);

    /// <summary>All placements of two turns, with the first field's label where it has one; without, only where its unit says what it is.</summary>
    public IEnumerable<Placement> All()
    {
        for (var from = 0; from < plate.Count; from++)
        {
            foreach (var (first, second) in lexicon.InTurns)
            {
                if (One(first, second, from) is not { } one || !GoesOn(one.To) || One(first, second, one.To) is not { } other || one.Second == other.Second || !AreNear(one.First, other.First)) continue;
                if (reader.Read(first, $"{one.First} / {other.First}", null) is not { } firsts || reader.Read(second, $"{one.Second} / {other.Second}", null) is not { } seconds) continue;
                foreach (var (start, end, stands, cost) in Labelled(first, from, other.To))
                {
                    var all = new Stretch(start, end);
                    yield return new(start, end, stands, cost, new PlacedValue(first, firsts, all), new PlacedValue(second, seconds, all));
                }
            }
        }
    }

    private Turn? One(Field first, Field second, int from)
    {
        foreach (var end in reach.Ends(from))
        {
            if (reach.UnitEnd(first, end) is not { } at || !GoesOn(at) || reader.Read(first, plate.Slice(from, at), null) is not { } text) continue;
            foreach (var last in reach.Ends(at))
            {
                if (reach.UnitEnd(second, last) is { } to && reader.Read(second, plate.Slice(at, to), null) is { } beside) return new(to, text, beside);
            }
        }

        return null;
    }

    private static bool AreNear(string one, string other) =>
        Quantities.TradeNumber.TryRead(one, fractions: false, signed: false, out var first, out _) && Quantities.TradeNumber.TryRead(other, fractions: false, signed: false, out var second, out _) && Quantities.Within.Ratio(first.Double, second.Double, Widest);

    private bool GoesOn(int at) => plate.Is(at, TokenKind.Number) && plate.SameLine(at) && Gaps.BetweenHalves(plate.Gap(at));

    private IEnumerable<(int From, int To, LabelStands Stands, int Cost)> Labelled(Field field, int from, int to)
    {
        if (lexicon.ByUnit.Contains(field)) yield return (from, to, LabelStands.Nowhere, 0);
        for (var at = 0; at < from; at++)
        {
            if (matches[at].Exists(label => label.End == from && Announces(label, field)) && Gaps.FromLabel(plate, at, from, to) is { } cost) yield return (at, to, LabelStands.Before, cost);
        }

        if (to == plate.Count) yield break;
        foreach (var label in matches[to].Where(label => Announces(label, field)))
        {
            if (Gaps.ToLabel(plate, from, to, label.End) is { } cost) yield return (from, label.End, LabelStands.Behind, cost);
        }
    }

    private static bool Announces(Match match, Field field) => match.Node.Labels.Exists(label => label.Field == field && label.Label.Says is null);
}
