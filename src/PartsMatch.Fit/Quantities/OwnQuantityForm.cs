using UnitsNet;

namespace PartsMatch.Fit.Quantities;

/// <summary>A quantity with a meaning and units of its own, such as a difference of pressures or the load on an evaporator, read and written as the library's quantity that it is made of.</summary>
/// <typeparam name="T">The type of its own.</typeparam>
/// <typeparam name="TQuantity">The library's quantity.</typeparam>
/// <param name="form">How the library's quantity is read and written here.</param>
/// <param name="of">Makes the one of the other.</param>
/// <param name="quantity">What it is made of.</param>
internal sealed class OwnQuantityForm<T, TQuantity>(QuantityForm<TQuantity> form, Func<TQuantity, T> of, Func<T, TQuantity> quantity) : TextForm<T>
    where T : notnull
    where TQuantity : struct, IQuantity
{
    /// <inheritdoc/>
    public override string Expected => form.Expected;

    /// <inheritdoc/>
    public override string Example => form.Example;

    /// <inheritdoc/>
    public override IReadOnlyList<string> UnitSpellings => form.UnitSpellings;

    /// <inheritdoc/>
    public override bool TakesFractions => form.TakesFractions;

    /// <inheritdoc/>
    public override TextReading<T> Read(string text)
    {
        var reading = form.Read(text);
        return reading.IsRead ? TextReading<T>.Of(of(reading.Value)) : TextReading<T>.Refused(reading.Wrong!);
    }

    /// <inheritdoc/>
    public override string Write(T value, Units units = Units.AsGiven) => form.Write(quantity(value), units);

    /// <inheritdoc/>
    public override Figure? FigureOf(object value, Units units) => form.FigureOf(quantity((T)value), units);

    /// <inheritdoc/>
    public override IReadOnlyList<double> StepsOf(object value) => form.StepsOf(quantity((T)value));
}
