using System.Text;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Figures that say the one before them again in another unit, and nothing of their own: RANGE 20-100 PSI (1.4-7 BAR), MAX 650 PSI 45 BAR, 1/4 HP (187 W).</summary>
internal sealed class RepeatedFigures(PlateText plate, FigureReach reach)
{
    /// <summary>How far a converted figure may be off, in steps of its scale (a kelvin is a tenth, a bar a whole one), and as a share of it, also where the trade sells by the size: 0.18 kW for 1/4 hp; practice.</summary>
    private const double Rounding = 0.06;
    private const double Share = 0.02;
    private const double ShareOfSizes = 0.04;

    /// <summary>No plate rounds by more, however few digits it has: 0.4 for 0.44, but not 1 for 0.75; practice.</summary>
    private const double MostOfDigit = 0.125;

    private bool? hasBrackets;

    /// <summary>Adds to the placements those that are longer by such a figure.</summary>
    public void AddTo(List<Placement> placements)
    {
        var count = placements.Count;
        for (var at = 0; at < count; at++)
        {
            if (placements[at] is { Stands: not LabelStands.Nowhere, Values.Count: > 0 } one && Extended(one) is { } longer) placements.Add(longer);
        }
    }

    private Placement? Extended(Placement one)
    {
        var field = one.Values[0].Field;
        if (!Follows(one.To)) return null;
        for (var figure = one.From; figure < one.To; figure++)
        {
            if (End(field, figure, one.To) is { } end) return one.Until(end);
        }

        return null;
    }

    /// <summary>Whether a figure, with its unit, repeats the one right before it.</summary>
    public bool Repeats(Field field, int from, int to)
    {
        if (!Follows(from)) return false;
        foreach (var (figure, _) in reach.FiguresBefore(from))
        {
            if (End(field, figure, from) == to) return true;
        }

        return false;
    }

    /// <summary>The end of a figure in brackets of its own, 13 C of 55 (13 C), that begins with a token; null when none does.</summary>
    public int? InBrackets(Field field, int at)
    {
        if (!OpensBracket(at)) return null;
        foreach (var end in reach.Ends(at))
        {
            if (reach.UnitEnd(field, end) is { } behind && plate.Behind(behind) is [')' or ']', ..]) return behind;
        }

        return null;
    }

    /// <summary>Whether the plate has any such brackets.</summary>
    public bool HasBrackets => hasBrackets ??= Enumerable.Range(0, plate.Count).Any(OpensBracket);

    /// <summary>Whether a bracket stands before a figure.</summary>
    public bool OpensBracket(int at) => plate.Is(at, TokenKind.Number) && plate.SameLine(at) && plate.Gap(at).TrimEnd(" +").Trim() is "(" or "[";

    /// <summary>Whether a figure in brackets comes to what the one before it, that has no unit, may be in some unit.</summary>
    public bool MayRepeat(Field field, int bare, int from, int to) =>
        field.Form.UnitSpellings.Any(unit => !PlateUnits.AreOne(field, unit, UnitAt(field, from, to)!) && RepeatsIn(field, unit, bare, from, to));

    /// <summary>Whether it comes to what the one before it is in a given unit.</summary>
    public bool RepeatsIn(Field field, string unit, int bare, int from, int to) => AreEqual(field, StepsOf(field, $"{plate.Slice(bare, from)} {unit}"), plate.Slice(from, to).ToString());

    /// <summary>Whether a figure comes to what was read.</summary>
    public bool Says(IReadOnlyList<PlacedValue> values, int from, int to) => AreEqual(values[0].Field, [.. values.SelectMany(value => Steps(value.Field, value.Text))], plate.Slice(from, to).ToString());

    /// <summary>Whether a value says another again in another unit: 0.37 kW beside 1/2 hp.</summary>
    public static bool SaysAgain(Field field, string text, string other) => !PlateUnits.AreOne(field, UnitOf(text), UnitOf(other)) && AreEqual(field, StepsOf(field, text), other);

    private static string UnitOf(string text) => text[(text.LastIndexOf(' ') + 1)..];

    /// <summary>The end of a figure that repeats the one before it, from one token to before another; null when none does.</summary>
    private int? End(Field field, int from, int to)
    {
        if (UnitAt(field, from, to) is not { } unit) return null;
        foreach (var end in reach.Ends(to))
        {
            if (reach.UnitEnd(field, end) is { } behind && UnitAt(field, to, behind) is { } other && !PlateUnits.AreOne(field, unit, other) && AreEqual(field, StepsOf(field, plate.Slice(from, to)), plate.Slice(to, behind).ToString())) return behind;
        }

        return null;
    }

    /// <summary>Whether a figure stands where one may that repeats the one before it.</summary>
    private bool Follows(int at) => plate.Is(at, TokenKind.Number) && plate.SameLine(at) && plate.Gap(at).Trim() is "" or "(" or "/" or "[" or "=";

    /// <summary>The unit of a figure from one token to before another; null where it has none.</summary>
    public string? UnitAt(Field field, int from, int to)
    {
        var ends = reach.Ends(from);
        for (var last = ends.Count - 1; last >= 0; last--)
        {
            if (reach.UnitEnd(field, ends[last]) == to) return plate.Slice(ends[last], to).ToString();
        }

        return null;
    }

    /// <summary>Whether a figure comes to what another one is, within the digits that it has.</summary>
    private static bool AreEqual(Field field, IReadOnlyList<double> one, string figure)
    {
        var (steps, less, more) = (StepsOf(field, figure), StepsOf(field, Moved(field, figure, -1)), StepsOf(field, Moved(field, figure, 1)));
        return one.Count > 0 && one.Count == steps.Count && Enumerable.Range(0, one.Count).All(at =>
            Math.Abs(one[at] - steps[at]) <= Rounding || (less.Count == one.Count && more.Count == one.Count && Math.Min(less[at], more[at]) <= one[at] && one[at] <= Math.Max(less[at], more[at])));
    }

    /// <summary>A figure with each of its numbers less or more by as much as it may be off: 0.35 and 0.45 kW of 0.4 kW.</summary>
    private static string Moved(Field field, string figure, int sign)
    {
        var moved = new StringBuilder();
        for (var at = 0; at < figure.Length;)
        {
            if (char.IsAsciiDigit(figure[at]) && TradeNumber.TryRead(figure.AsSpan(at), field.Form.TakesFractions, signed: false, out var number, out var length))
            {
                var digit = number.Denominator > 0 ? 0 : Math.Min(Math.Pow(10, -DigitsBehindPoint(figure.AsSpan(at, length))) / 2, number.Double * MostOfDigit);
                moved.Append(TradeNumber.Write(number.Double + (sign * Math.Max(digit, number.Double * (field.Form.TakesFractions ? ShareOfSizes : Share)))));
                at += length;
            }
            else
            {
                moved.Append(figure[at++]);
            }
        }

        return moved.ToString();
    }

    private static int DigitsBehindPoint(ReadOnlySpan<char> number) => number.IndexOfAny('.', ',') is >= 0 and var point ? number.Length - point - 1 : 0;

    /// <summary>Where a figure, or both ends of a span, stand on the scale of its field.</summary>
    private static IReadOnlyList<double> StepsOf(Field field, ReadOnlySpan<char> figure)
    {
        if (FigureText.For(field.Form.TakesFractions, figure) is not { } text) return [];
        if (Steps(field, text) is { Count: > 0 } steps) return steps;
        return FigureText.Ends(text) is { } ends ? [.. Steps(field, $"{ends.Low} {ends.Unit}"), .. Steps(field, ends.High)] : [];
    }

    private static IReadOnlyList<double> Steps(Field field, string text) => field.Form.ReadAny(text) is { IsRead: true } read ? field.Form.StepsOf(read.Value) : [];
}
