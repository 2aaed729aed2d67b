using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace PartsMatch.Fit.Quantities;

/// <summary>Figures of a quantity side by side: 1725/1140 rpm, 3/4-1/3 hp.</summary>
/// <param name="one">How one figure is read and written.</param>
/// <param name="example">A text that reads.</param>
/// <typeparam name="T">The quantity.</typeparam>
public sealed class FiguresForm<T>(QuantityForm<T> one, string example) : TextForm<Figures<T>>
    where T : struct, IQuantity
{
    /// <inheritdoc/>
    public override string Expected => $"{one.Expected}, or several side by side, such as {example}";

    /// <inheritdoc/>
    public override string Example => example;

    /// <inheritdoc/>
    public override IReadOnlyList<string> UnitSpellings => one.UnitSpellings;

    /// <inheritdoc/>
    public override bool TakesFractions => one.TakesFractions;

    /// <inheritdoc/>
    public override TextReading<Figures<T>> Read(string text)
    {
        // 3/4 hp is a fraction, 370/250 W are two figures: the unit tells, and it stands behind.
        var plain = one.Plain(text);
        if (!TryScan(plain, one.Us.Fractions, out var figures, out var unit) || (one.Us.Fractions && !unit.Fractions && !TryScan(plain, fractions: false, out figures, out unit)))
        {
            return TextReading<Figures<T>>.Refused(string.IsNullOrWhiteSpace(text) ? "nothing is written" : $"“{text.Trim()}” is not {Expected}");
        }

        var values = new List<T>();
        foreach (var figure in figures)
        {
            var value = one.Make(figure.Number, unit, text);
            if (!value.IsRead) return TextReading<Figures<T>>.Refused(value.Wrong!);
            values.Add(value.Value);
        }

        return TextReading<Figures<T>>.Of(new(values));
    }

    /// <inheritdoc/>
    public override string Write(Figures<T> value, Units units = Units.AsGiven)
    {
        var unit = one.UnitFor(value[0], units);
        var numbers = value.Select(figure => one.WriteNumber(figure, unit, units)).ToList();

        // 3/4/1/3 cannot be told apart by eye, nor 3/2 from three halves: where fractions are written, figures stand further apart.
        var joiner = unit.Fractions ? " / " : "/";
        var written = $"{string.Join(joiner, numbers)} {unit.Symbol}";

        // 1 / 4 hp is a quarter: one horsepower and four need their unit each.
        return !unit.Fractions || (TryScan(written, fractions: true, out var figures, out _) && figures.Count == numbers.Count) ? written : string.Join(" / ", numbers.Select(number => $"{number} {unit.Symbol}"));
    }

    /// <inheritdoc/>
    public override Figure? FigureOf(object value, Units units) => value is Figures<T> { Count: 1 } single ? one.FigureOf(single[0], units) : null;

    /// <inheritdoc/>
    public override IReadOnlyList<double> StepsOf(object value) => [.. ((Figures<T>)value).SelectMany(figure => one.StepsOf(figure))];

    private bool TryScan(string text, bool fractions, out List<FigureScan.Joined> figures, [NotNullWhen(true)] out UnitText? unit)
    {
        unit = FigureScan.TryRead(text, fractions, spelling => one.UnitOf(spelling) is not null, out figures, out var spelt) ? one.UnitOf(spelt) : null;
        return unit is not null;
    }
}
