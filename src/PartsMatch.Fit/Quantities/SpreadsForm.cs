using UnitsNet;

namespace PartsMatch.Fit.Quantities;

/// <summary>Figures of which each may be a span: 115/208-230 V, 7.4/3.9-3.7 A.</summary>
/// <param name="one">How one figure is read and written.</param>
/// <param name="example">A text that reads.</param>
/// <param name="widestRatio">How far apart the ends of a dashed or slashed span may lie, as a ratio; null when a single dash always joins and a slash always parts (amps).</param>
/// <remarks>Slashed volts whose ratio is at most 1.25 are a span, above it two taps, usually 2:1 or √3:1 (practice); 100 to 240 V, with the word, is a span of any width.</remarks>
/// <typeparam name="T">The quantity.</typeparam>
public sealed class SpreadsForm<T>(QuantityForm<T> one, string example, double? widestRatio) : TextForm<Figures<Spread<T>>>
    where T : struct, IQuantity
{
    /// <summary>The greatest ratio of two taps with a dash between: 2 with a tenth of slack (practice).</summary>
    private const double MostTaps = 2.2;

    /// <summary>Amps at the two ends of a span of volts lie no further apart than the volts (practice).</summary>
    private const double MostAcrossSpan = 1.25;

    /// <summary>Amps at two taps lie at least so far apart: √3 with a tenth of slack (practice).</summary>
    private const double LeastBetweenTaps = 1.6;

    /// <inheritdoc/>
    public override string Expected => $"{one.Expected}, or several, such as {example}";

    /// <inheritdoc/>
    public override string Example => example;

    /// <inheritdoc/>
    public override IReadOnlyList<string> UnitSpellings => one.UnitSpellings;

    /// <inheritdoc/>
    public override bool TakesFractions => one.TakesFractions;

    /// <inheritdoc/>
    public override TextReading<Figures<Spread<T>>> Read(string text)
    {
        if (!FigureScan.TryRead(one.Plain(text), one.Us.Fractions, unit => one.UnitOf(unit) is not null, out var figures, out var unitText)
            || one.UnitOf(unitText) is not { } unit)
        {
            return TextReading<Figures<Spread<T>>>.Refused(string.IsNullOrWhiteSpace(text) ? "nothing is written" : $"“{text.Trim()}” is not {Expected}");
        }

        var values = new List<T>();
        foreach (var figure in figures)
        {
            var value = one.Make(figure.Number, unit, text);
            if (!value.IsRead) return TextReading<Figures<Spread<T>>>.Refused(value.Wrong!);
            values.Add(value.Value);
        }

        var spreads = new List<Spread<T>>();
        var open = false;
        for (var at = 0; at < values.Count; at++)
        {
            var (value, joiner) = (values[at], figures[at].Joiner);
            if (open && joiner == '-' && widestRatio is { } widest && IsNeitherSpanNorTaps(spreads[^1].First, value, widest))
            {
                return TextReading<Figures<Spread<T>>>.Refused($"“{text.Trim()}” is too wide for a span; with a slash it is two figures, and with the word “to” a wide span");
            }

            if (open && Joins(spreads[^1], joiner, value) && !(widestRatio is null && IsOneOfList(figures, values, at)))
            {
                spreads[^1] = Widened(spreads[^1], value);
                open = joiner == '/';
            }
            else
            {
                spreads.Add(new(value));
                open = true;
            }
        }

        return TextReading<Figures<Spread<T>>>.Of(new(spreads));
    }

    /// <inheritdoc/>
    public override string Write(Figures<Spread<T>> value, Units units = Units.AsGiven)
    {
        var unit = one.UnitFor(value[0].First, units);
        return $"{string.Join('/', value.Select(spread => WriteSpread(spread, unit, units)))} {unit.Symbol}";
    }

    /// <inheritdoc/>
    public override Figure? FigureOf(object value, Units units) =>
        value is Figures<Spread<T>> { Count: 1 } single && !single[0].HasTwoEnds ? one.FigureOf(single[0].First, units) : null;

    /// <inheritdoc/>
    public override IReadOnlyList<double> StepsOf(object value) => [.. ((Figures<Spread<T>>)value).SelectMany(spread => (IEnumerable<double>)[.. one.StepsOf(spread.First), .. one.StepsOf(spread.Last)])];

    private string WriteSpread(Spread<T> spread, UnitText unit, Units units)
    {
        var first = one.WriteNumber(spread.First, unit, units);
        if (!spread.HasTwoEnds) return first;
        var joiner = widestRatio is { } widest && !Within.Ratio(Number(spread.First), Number(spread.Last), widest) ? " to " : "-";
        return $"{first}{joiner}{one.WriteNumber(spread.Last, unit, units)}";
    }

    private bool Joins(Spread<T> before, char joiner, T next) => joiner switch
    {
        't' => true,
        '-' when widestRatio is null => true,
        '-' or '/' when widestRatio is { } widest => Within.Ratio(Number(before.First), Number(next), widest) && Within.Ratio(Number(before.Last), Number(next), widest),
        _ => false,
    };

    /// <summary>1.3-1.0-0.8 A are three steps, while 5.0-4.8-2.4 A are a span and a tap, as 208-230-460 V beside them: where dashes stand on both sides of a figure, they join two only that lie near together and far from the next.</summary>
    private bool IsOneOfList(List<FigureScan.Joined> figures, List<T> values, int at)
    {
        var (isBehindDash, isBeforeDash) = (figures[at - 1].Joiner == '-', at + 1 < figures.Count && figures[at + 1].Joiner == '-');
        return figures[at].Joiner == '-' && (isBehindDash || isBeforeDash)
            && (!AreWithin(at - 1, at, MostAcrossSpan) || (isBehindDash && AreWithin(at - 2, at - 1, LeastBetweenTaps)) || (isBeforeDash && AreWithin(at, at + 1, LeastBetweenTaps)));

        bool AreWithin(int first, int next, double ratio) => Within.Ratio(Number(values[first]), Number(values[next]), ratio);
    }

    /// <summary>A dash joins a span, or parts two taps up to 2:1; 20-230 and 208-23 have lost a digit.</summary>
    private bool IsNeitherSpanNorTaps(T first, T next, double widest)
    {
        var (one, other) = (Number(first), Number(next));
        return !Within.Ratio(one, other, Math.Max(widest, MostTaps));
    }

    /// <summary>The ends of a span of volts stand low to high, and 208/240/220 V ends where 208/240 V does; amps stay as they stand, beside the volts they belong to.</summary>
    private Spread<T> Widened(Spread<T> before, T next)
    {
        if (widestRatio is null) return new(before.First, next);
        return Number(next) < Number(before.First) ? new(next, before.Last) : Number(next) > Number(before.Last) ? new(before.First, next) : before;
    }

    private double Number(T value) => value.As(one.Si.Unit);
}
