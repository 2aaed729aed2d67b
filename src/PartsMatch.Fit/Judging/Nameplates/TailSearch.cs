namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Joins a value and the second figure that belongs to it: 5 MFD and 370 VAC, in either order.</summary>
internal sealed class TailSearch(PlateText plate, Lexicon lexicon, ValueReader reader, FigureReach reach)
{
    private sealed record Tail(int From, int To, string Figure);

    /// <summary>The placements, and those that are longer by a second figure.</summary>
    public IReadOnlyList<Placement> Extend(IReadOnlyList<Placement> simple)
    {
        if (lexicon.Tails.Count == 0) return simple;
        var tails = Enumerable.Range(0, plate.Count).SelectMany(Tails).ToList();
        var byFrom = tails.ToLookup(tail => tail.From);
        var byTo = tails.ToLookup(tail => tail.To);
        var joined = new List<Placement>();
        foreach (var placement in simple.Where(placement => placement.Values is [{ } value] && lexicon.Tails.ContainsKey(value.Field)))
        {
            joined.AddRange(byFrom[placement.To].Where(tail => MayJoin(tail.From)).Select(tail => Join(placement, tail)).OfType<Placement>());
            joined.AddRange(byTo[placement.From].Where(_ => MayJoin(placement.From)).Select(tail => Join(placement, tail)).OfType<Placement>());
        }

        return [.. simple, .. joined];
    }

    private bool MayJoin(int at) => plate.SameLine(at) && Gaps.BetweenHalves(plate.Gap(at));

    /// <summary>370 VAC, VAC 370, and a bare 370 behind a slash or an @.</summary>
    private IEnumerable<Tail> Tails(int at)
    {
        if (plate.Is(at, TokenKind.Number))
        {
            var figure = plate.Slice(at, at + 1).ToString();
            if (reach.UnitEnd(lexicon.TailUnits, at + 1) is { } end) yield return new(at, end, figure);
            else if (plate.Gap(at).IndexOfAny('/', '@') >= 0) yield return new(at, at + 1, figure);
        }
        else if (reach.UnitEnd(lexicon.TailUnits, at) is { } end && plate.Is(end, TokenKind.Number) && Gaps.FromLabel(plate, at, end, end + 1) == 0)
        {
            yield return new(at, end + 1, plate.Slice(end, end + 1).ToString());
        }
    }

    private Placement? Join(Placement main, Tail second)
    {
        var value = main.Values[0];
        var tail = lexicon.Tails[value.Field];
        if (second.Figure.Length > 6 || !double.TryParse(second.Figure, global::System.Globalization.NumberStyles.AllowDecimalPoint, global::System.Globalization.CultureInfo.InvariantCulture, out var figure)
            || !Quantities.Within.Span(figure, tail.Least, tail.Most)
            || reader.Read(value.Field, $"{value.Text} {second.Figure} {tail.Units[0]}", null) is not { } text)
        {
            return null;
        }

        var (from, to) = (Math.Min(main.From, second.From), Math.Max(main.To, second.To));
        return new(from, to, main.Stands, main.Cost, new PlacedValue(value.Field, text, new Stretch(from, to)));
    }
}
