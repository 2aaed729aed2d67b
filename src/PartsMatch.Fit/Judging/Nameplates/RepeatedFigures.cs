namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Figures that say the one before them again in another unit, and nothing of their own: RANGE 20-100 PSI (1.4-7 BAR), MAX 650 PSI 45 BAR, 1/4 HP (187 W).</summary>
internal sealed class RepeatedFigures(PlateText plate, FigureReach reach)
{
    /// <summary>How far a converted figure may be off by rounding, in steps of its scale (a kelvin is a tenth, a bar a whole one), and as a share of it; practice.</summary>
    private const double Rounding = 0.06;
    private const double Share = 0.02;

    /// <summary>Adds to the placements those that are longer by such a figure.</summary>
    public void AddTo(List<Placement> placements) =>
        placements.AddRange(placements.FindAll(one => one is { Stands: not LabelStands.Nowhere, Values.Count: > 0 }).Select(Extended).OfType<Placement>().ToList());

    private Placement? Extended(Placement one)
    {
        var field = one.Values[0].Field;
        foreach (var figure in Enumerable.Range(one.From, one.To - one.From))
        {
            if (End(field, figure, one.To) is { } end) return one.Until(end);
        }

        return null;
    }

    /// <summary>Whether a figure, with its unit, repeats the one right before it.</summary>
    public bool Repeats(Field field, int from, int to) => Enumerable.Range(0, from).Any(figure => End(field, figure, from) == to);

    /// <summary>The end of a figure in brackets of its own, 13 C of 55 (13 C), that begins with a token; null when none does.</summary>
    public int? InBrackets(Field field, int at) =>
        plate.Is(at, TokenKind.Number) && plate.SameLine(at) && plate.Gap(at).TrimEnd(" +").Trim() is "(" or "[" ? reach.Ends(at).Select(end => reach.UnitEnd(field, end)).FirstOrDefault(end => end is { } behind && plate.Behind(behind) is [')' or ']', ..]) : null;

    /// <summary>Whether a figure in brackets comes to what the one before it, that has no unit, may be in some unit.</summary>
    public bool MayRepeat(Field field, int bare, int from, int to) =>
        field.Form.UnitSpellings.Any(unit => !PlateUnits.AreOne(field, unit, UnitAt(field, from, to)!) && AreEqual(StepsOf(field, $"{plate.Slice(bare, from)} {unit}"), StepsOf(field, from, to)));

    /// <summary>Whether a figure comes to what was read.</summary>
    public bool Says(IReadOnlyList<PlacedValue> values, int from, int to) => AreEqual([.. values.SelectMany(value => Steps(value.Field, value.Text))], StepsOf(values[0].Field, from, to));

    /// <summary>The end of a figure that repeats the one before it, from one token to before another; null when none does.</summary>
    private int? End(Field field, int from, int to)
    {
        if (to >= plate.Count || !plate.Is(to, TokenKind.Number) || !plate.SameLine(to) || plate.Gap(to).Trim() is not ("" or "(" or "/" or "[" or "=") || UnitAt(field, from, to) is not { } unit) return null;
        return reach.Ends(to).Select(end => reach.UnitEnd(field, end)).FirstOrDefault(end => end is { } behind && UnitAt(field, to, behind) is { } other && !PlateUnits.AreOne(field, unit, other) && AreEqual(StepsOf(field, from, to), StepsOf(field, to, behind)));
    }

    /// <summary>The unit of a figure from one token to before another; null where it has none.</summary>
    public string? UnitAt(Field field, int from, int to) => reach.Ends(from).FindLast(end => reach.UnitEnd(field, end) == to) is > 0 and var end ? plate.Slice(end, to).ToString() : null;

    private static bool AreEqual(IReadOnlyList<double> one, IReadOnlyList<double> other) =>
        one.Count > 0 && one.Count == other.Count && one.Zip(other).All(pair => Math.Abs(pair.First - pair.Second) <= Math.Max(Rounding, Share * Math.Abs(pair.First)));

    /// <summary>Where a figure, or both ends of a span, stand on the scale of its field.</summary>
    private IReadOnlyList<double> StepsOf(Field field, int from, int to) => StepsOf(field, plate.Slice(from, to));

    private static IReadOnlyList<double> StepsOf(Field field, ReadOnlySpan<char> figure)
    {
        if (FigureText.For(field.Form.TakesFractions, figure) is not { } text) return [];
        if (Steps(field, text) is { Count: > 0 } steps) return steps;
        return FigureText.Ends(text) is { } ends ? [.. Steps(field, $"{ends.Low} {ends.Unit}"), .. Steps(field, ends.High)] : [];
    }

    private static IReadOnlyList<double> Steps(Field field, string text) => field.Form.ReadAny(text) is { IsRead: true } read ? field.Form.StepsOf(read.Value) : [];
}
