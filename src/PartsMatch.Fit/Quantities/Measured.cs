using UnitsNet;

namespace PartsMatch.Fit.Quantities;

/// <summary>What a meter shows: one reading, or one a leg of a three-phase supply. Unlike a plate's figures it may be zero.</summary>
/// <param name="Legs">One to three readings, in the order of the legs.</param>
/// <typeparam name="T">The quantity.</typeparam>
public sealed record Measured<T>(Figures<T> Legs)
    where T : struct, IQuantity;

/// <summary>Readings of a meter: 0 V, 460/467/450 V.</summary>
/// <param name="one">How one reading is read and written; it takes zero.</param>
/// <param name="example">A text that reads.</param>
/// <typeparam name="T">The quantity.</typeparam>
public sealed class MeasuredForm<T>(QuantityForm<T> one, string example) : TextForm<Measured<T>>
    where T : struct, IQuantity
{
    private const int MostLegs = 3;

    private readonly FiguresForm<T> figures = new(one, example);

    /// <inheritdoc/>
    public override string Expected => $"{one.Expected}, or one for each leg, such as {example}";

    /// <inheritdoc/>
    public override string Example => example;

    /// <inheritdoc/>
    public override IReadOnlyList<string> UnitSpellings => figures.UnitSpellings;

    /// <inheritdoc/>
    public override TextReading<Measured<T>> Read(string text)
    {
        var reading = figures.Read(text);
        if (!reading.IsRead) return TextReading<Measured<T>>.Refused(reading.Wrong.Replace(figures.Expected, Expected, StringComparison.Ordinal));
        return reading.Value.Count <= MostLegs
            ? TextReading<Measured<T>>.Of(new(reading.Value))
            : TextReading<Measured<T>>.Refused($"“{text.Trim()}” has more than three readings");
    }

    /// <inheritdoc/>
    public override string Write(Measured<T> value, Units units = Units.AsGiven) => figures.Write(value.Legs, units);

    /// <inheritdoc/>
    public override Figure? FigureOf(object value, Units units) => figures.FigureOf(((Measured<T>)value).Legs, units);
}
