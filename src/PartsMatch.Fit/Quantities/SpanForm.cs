using UnitsNet;

namespace PartsMatch.Fit.Quantities;

/// <summary>A quantity from one value to another, or a single one, read and written as its quantity is: 100 to 400 psi, -30/90 °F, 20 psi.</summary>
/// <typeparam name="T">The type of the two together.</typeparam>
/// <typeparam name="TQuantity">The quantity.</typeparam>
/// <param name="one">How one value is read and written.</param>
/// <param name="name">What one is called: pressure.</param>
/// <param name="names">What several are called: gauge pressures.</param>
/// <param name="example">A text that reads.</param>
/// <param name="of">Makes the one of its two ends.</param>
/// <param name="ends">Its two ends.</param>
internal sealed class SpanForm<T, TQuantity>(QuantityForm<TQuantity> one, string name, string names, string example, Func<TQuantity, TQuantity, T> of, Func<T, (TQuantity Low, TQuantity High)> ends) : TextForm<T>
    where T : notnull
    where TQuantity : struct, IQuantity
{
    /// <inheritdoc/>
    public override string Expected => $"{names} with their unit, such as {example}";

    /// <inheritdoc/>
    public override string Example => example;

    /// <inheritdoc/>
    public override IReadOnlyList<string> UnitSpellings => one.UnitSpellings;

    /// <inheritdoc/>
    public override TextReading<T> Read(string text)
    {
        var rest = one.Plain(text).AsSpan().Trim();
        if (!one.TryReadNumber(rest, out var first, out var length)) return Refused(text);
        rest = rest[length..].TrimStart();
        if (one.UnitOf(rest) is { } only) return Of(first, first, only, text);
        var firstUnit = UnitBeforeJoiner(ref rest);
        var joined = Joiner(rest);
        if (joined == 0) return Refused(text);
        rest = rest[joined..].TrimStart();
        if (!one.TryReadNumber(rest, out var last, out length)) return Refused(text);
        return one.UnitOf(rest[length..].Trim()) is { } unit && (firstUnit is null || firstUnit == unit || firstUnit.CountsDown) ? Of(first, last, unit, text, firstUnit) : Refused(text);
    }

    /// <inheritdoc/>
    public override string Write(T value, Units units = Units.AsGiven)
    {
        var (least, most) = ends(value);
        var (unit, other) = (one.UnitFor(least, units), one.UnitFor(most, units));
        if (!unit.CountsDown) other = unit;
        var low = one.WriteNumber(least, unit, units);
        var high = one.WriteNumber(most, other, units);
        return unit != other ? $"{low} {unit.Symbol} to {high} {other.Symbol}" : low == high ? $"{low} {unit.Symbol}" : $"{low} to {high} {unit.Symbol}";
    }

    /// <inheritdoc/>
    public override IReadOnlyList<double> StepsOf(object value)
    {
        var (least, most) = ends((T)value);
        return [.. one.StepsOf(least), .. one.StepsOf(most)];
    }

    /// <summary>A unit that stands behind the first figure as well: 30 °F to 90 °F.</summary>
    private UnitText? UnitBeforeJoiner(ref ReadOnlySpan<char> text)
    {
        foreach (var spelling in one.UnitSpellings)
        {
            if (!text.StartsWith(spelling, StringComparison.OrdinalIgnoreCase) || Joiner(text[spelling.Length..].TrimStart()) == 0) continue;
            text = text[spelling.Length..].TrimStart();
            return one.UnitOf(spelling);
        }

        return null;
    }

    private static int Joiner(ReadOnlySpan<char> text) => text switch
    {
        ['t' or 'T', 'o' or 'O', ..] => 2,
        ['-' or '–' or '/', ..] => 1,
        _ => 0,
    };

    /// <summary>The two ends; a vacuum stands in its own unit before a pressure, 20 in Hg to 100 psi.</summary>
    private TextReading<T> Of(TradeNumber first, TradeNumber last, UnitText unit, string text, UnitText? firstUnit = null)
    {
        var (low, high) = (one.Make(first, firstUnit ?? unit, text), one.Make(last, unit, text));
        if (!low.IsRead) return TextReading<T>.Refused(low.Wrong);
        if (!high.IsRead) return TextReading<T>.Refused(high.Wrong);
        return low.Value.As(one.Si.Unit) <= high.Value.As(one.Si.Unit)
            ? TextReading<T>.Of(of(low.Value, high.Value))
            : TextReading<T>.Refused($"“{text.Trim()}” falls: the lower {name} stands first");
    }

    private TextReading<T> Refused(string text) =>
        TextReading<T>.Refused(string.IsNullOrWhiteSpace(text) ? "nothing is written" : $"“{text.Trim()}” is not {Expected}");
}
