using System.Globalization;

namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Joins a value and the second figure that belongs to it: 5 MFD and 370 VAC, in either order; 10 MFD and a bare 440 behind it.</summary>
internal sealed class TailSearch(PlateText plate, Lexicon lexicon, ValueReader reader, FigureReach reach)
{
    /// <summary>What speaks for the two: 370/440 behind a capacitance are its volts sooner than a fraction of an inch before OVAL.</summary>
    private const int Favour = 1;

    /// <summary>Of a figure such as 370/440.</summary>
    private const int LongestFigure = 12;

    private sealed record Tail(int From, int To, Stretch Figure, TailUnit Unit);

    /// <summary>How a second figure is known.</summary>
    private enum TailUnit
    {
        /// <summary>By its unit.</summary>
        Written,

        /// <summary>By a slash or an @ before it.</summary>
        Sign,

        /// <summary>By being a usual one.</summary>
        None,
    }

    /// <summary>Adds to the placements those that are longer by a second figure.</summary>
    public void AddTo(List<Placement> simple)
    {
        var mains = simple.FindAll(placement => placement.Values is [{ } value] && lexicon.Tails.ContainsKey(value.Field));
        if (mains.Count == 0) return;
        var tails = new List<Tail>();
        for (var at = 0; at < plate.Count; at++) AddTails(at, tails);
        var byFrom = tails.ToLookup(tail => tail.From);
        var byTo = tails.Where(tail => tail.Unit == TailUnit.Written).ToLookup(tail => tail.To);
        foreach (var placement in mains)
        {
            simple.AddRange(byFrom[placement.To].Where(tail => MayJoin(tail.From)).Select(tail => Join(placement, tail)).OfType<Placement>());
            simple.AddRange(byTo[placement.From].Where(_ => MayJoin(placement.From)).Select(tail => Join(placement, tail)).OfType<Placement>());
        }
    }

    private bool MayJoin(int at) => plate.SameLine(at) && Gaps.BetweenHalves(plate.Gap(at));

    /// <summary>370 VAC, VAC 370, 370/440 VAC, and a bare 370.</summary>
    private void AddTails(int at, List<Tail> tails)
    {
        if (plate.Is(at, TokenKind.Number))
        {
            foreach (var to in reach.Ends(at))
            {
                var figure = new Stretch(at, to);
                if (reach.UnitEnd(lexicon.TailUnits, to) is { } end) tails.Add(new(at, end, figure, TailUnit.Written));
                else tails.Add(new(at, to, figure, plate.Gap(at).IndexOfAny('/', '@') >= 0 ? TailUnit.Sign : TailUnit.None));
            }
        }
        else if (reach.UnitEnd(lexicon.TailUnits, at) is { } end && plate.Is(end, TokenKind.Number) && Gaps.FromLabel(plate, at, end, end + 1) == 0)
        {
            foreach (var to in reach.Ends(end)) tails.Add(new(at, to, new(end, to), TailUnit.Written));
        }
    }

    private Placement? Join(Placement main, Tail second)
    {
        var value = main.Values[0];
        var tail = lexicon.Tails[value.Field];
        var figure = plate.Slice(second.Figure.From, second.Figure.To).ToString();
        if (!Holds(tail, figure, second.Unit) || reader.Read(value.Field, $"{value.Text} {figure} {tail.Units[0]}", null) is not { } text) return null;
        var (from, to) = (Math.Min(main.From, second.From), Math.Max(main.To, second.To));
        return new(from, to, main.Stands, main.Cost - Favour, new PlacedValue(value.Field, text, new Stretch(from, to))) { Main = main };
    }

    private static bool Holds(PlateTail tail, string figures, TailUnit unit) => figures.Length <= LongestFigure && figures.Split('/').All(part =>
        double.TryParse(part.AsSpan().Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var figure)
        && Quantities.Within.Span(figure, tail.Least, tail.Most) && (unit != TailUnit.None || tail.Usual.Contains(figure)));
}
