using System.Globalization;
using UnitsNet;

namespace PartsMatch.Fit.Quantities;

/// <summary>One unit's place in a quantity's text form.</summary>
/// <param name="Unit">The unit, as UnitsNet names it.</param>
/// <param name="Symbol">How it is written.</param>
/// <param name="Digits">Digits behind the point when a value is converted into it.</param>
/// <param name="Fractions">Whether the trade writes fractions in it: 1/4 hp, 7/16 in.</param>
/// <param name="Spellings">How else it is spelt, in any case of letters.</param>
public sealed record UnitText(Enum Unit, string Symbol, int Digits, bool Fractions = false, params string[] Spellings)
{
    /// <summary>Whether its figures count downwards, with a sign or without: 20 in Hg of vacuum is 20 in Hg under zero.</summary>
    public bool CountsDown { get; init; }
}

/// <summary>How a quantity is read and written: a number, then a unit.</summary>
/// <typeparam name="T">A UnitsNet quantity.</typeparam>
public sealed class QuantityForm<T> : TextForm<T>
    where T : struct, IQuantity
{
    private readonly (string Spelling, UnitText Unit)[] spellings;

    /// <summary>Names the quantity, its range and the units in which it may stand.</summary>
    public QuantityForm(string name, string example, double least, double most, UnitText us, UnitText si, params UnitText[] others)
    {
        ArgumentNullException.ThrowIfNull(us);
        (Name, Example, Least, Most, Us, Si) = (name, example, least, most, us, si);
        UnitText[] all = us == si ? [us, .. others] : [us, si, .. others];
        spellings = [.. all
            .SelectMany(unit => unit.Spellings.Append(unit.Symbol).Select(spelling => (spelling, unit)))
            .OrderByDescending(pair => pair.spelling.Length)];
        UnitSpellings = [.. spellings.Select(pair => pair.Spelling)];
    }

    /// <summary>What the quantity is called, with its article: "a length".</summary>
    public string Name { get; }

    /// <inheritdoc/>
    public override string Example { get; }

    /// <summary>The least value, in the SI unit of the form.</summary>
    public double Least { get; }

    /// <summary>The greatest value, in the SI unit of the form.</summary>
    public double Most { get; }

    /// <summary>The unit of a US plate.</summary>
    public UnitText Us { get; }

    /// <summary>The SI unit of the trade.</summary>
    public UnitText Si { get; }

    /// <summary>The units of what is far larger than the trade's usual size, and where that begins, in the SI unit of the form: an altitude is written in feet or metres. Null where there are none.</summary>
    public (UnitText Us, UnitText Si, double From)? Large { get; init; }

    /// <summary>Whether its fractions are those of an inch: 1/3 in and 50/60 in are no lengths.</summary>
    public bool FractionsOfInches { get; init; }

    /// <summary>Digits behind the point that are kept of a number; null to keep all. 1/64 in has six.</summary>
    public int? MostDigits { get; init; }

    /// <summary>How much is a step on its scale, in the SI unit of the form; null where a quarter more is (<see cref="Steps"/>).</summary>
    public double? Step { get; init; }

    /// <summary>A bare number is read in the quantity's only everyday unit (V, A, Hz, rpm, µF); lengths, powers and temperatures need theirs said.</summary>
    public UnitText? Bare => Us == Si ? Us : null;

    /// <inheritdoc/>
    public override IReadOnlyList<string> UnitSpellings { get; }

    /// <inheritdoc/>
    public override bool TakesFractions => Us.Fractions;

    /// <inheritdoc/>
    public override string Expected => $"{Name}{(Bare is null ? " with its unit" : string.Empty)}, such as {Example}";

    private bool Signed => Least < 0;

    /// <inheritdoc/>
    public override TextReading<T> Read(string text)
    {
        var rest = Plain(text).AsSpan().Trim();
        if (!TryReadNumber(rest, out var number, out var length)) return Refuse(text);
        return UnitOf(rest[length..].Trim()) is { } unit ? Make(number, unit, text) : Refuse(text);
    }

    /// <inheritdoc/>
    public override string Write(T value, Units units = Units.AsGiven)
    {
        var unit = UnitFor(value, units);
        return $"{WriteNumber(value, unit, units)} {unit.Symbol}";
    }

    /// <inheritdoc/>
    public override Figure? FigureOf(object value, Units units)
    {
        var quantity = (T)value;
        var unit = UnitFor(quantity, units);
        return new(unit.Unit.Equals(quantity.Unit) && units == Units.AsGiven ? Kept((double)quantity.Value) : Math.Round(quantity.As(unit.Unit), unit.Digits), unit.Symbol);
    }

    /// <inheritdoc/>
    public override IReadOnlyList<double> StepsOf(object value) => Steps.Of(((T)value).As(Si.Unit), Step);

    /// <summary>A text in plain signs, its vulgar fractions spelt out as this quantity's units allow it; empty when they cannot be.</summary>
    internal string Plain(string text) => VulgarFractions.SpeltOut(PlainSigns.In(text), Us.Fractions) ?? string.Empty;

    /// <summary>Reads the number alone, as this quantity's units allow it.</summary>
    internal bool TryReadNumber(ReadOnlySpan<char> text, out TradeNumber number, out int length) =>
        TradeNumber.TryRead(text, Us.Fractions, Signed, out number, out length);

    /// <summary>The unit that a text spells; the bare unit for no text; null for anything else.</summary>
    internal UnitText? UnitOf(ReadOnlySpan<char> text)
    {
        if (text.IsEmpty) return Bare;
        foreach (var (spelling, unit) in spellings)
        {
            if (text.Equals(spelling, StringComparison.OrdinalIgnoreCase)) return unit;
        }

        return null;
    }

    /// <summary>A value of a number and a unit, unless it is out of range.</summary>
    internal TextReading<T> Make(TradeNumber number, UnitText unit, string text)
    {
        if (FractionsOfInches && number.Denominator > 0 && !FractionText.DividesAnInch(number.Denominator))
        {
            return TextReading<T>.Refused($"“{text.Trim()}” is no length: a fraction of an inch is of 2, 4, 8, 16, 32 or 64 parts");
        }

        var value = (T)(default(T).Value.IsDecimal
            ? Quantity.From(unit.CountsDown ? -Math.Abs(number.Decimal) : number.Decimal, unit.Unit)
            : Quantity.From(unit.CountsDown ? -Math.Abs(Kept(number.Double)) : Kept(number.Double), unit.Unit));
        var inSi = value.As(Si.Unit);
        return inSi >= Least && inSi <= Most
            ? TextReading<T>.Of(value)
            : TextReading<T>.Refused(string.Create(CultureInfo.InvariantCulture, $"“{text.Trim()}” is outside {Least:0.#####} to {Most:0.###} {Si.Symbol}"));
    }

    /// <summary>The unit to write a value in.</summary>
    internal UnitText UnitFor(T value, Units units) => units switch
    {
        Units.Us or Units.Si when Large is { } large && Math.Abs(value.As(Si.Unit)) >= large.From => units == Units.Us ? large.Us : large.Si,
        Units.Us => Us,
        Units.Si => Si,
        _ => OwnUnitOf(value) ?? Si,
    };

    /// <summary>The number of a value in a unit: exact as given, rounded to the trade's precision when converted.</summary>
    internal string WriteNumber(T value, UnitText unit, Units units) => unit.CountsDown ? SignedNumber(value, unit, units).TrimStart('-') : SignedNumber(value, unit, units);

    /// <summary>The unit that a value was given in; null where no text spells it.</summary>
    private UnitText? OwnUnitOf(T value)
    {
        // Asked once: it comes in a box.
        var own = value.Unit;
        foreach (var (_, unit) in spellings)
        {
            if (unit.Unit.Equals(own)) return unit;
        }

        return null;
    }

    private string SignedNumber(T value, UnitText unit, Units units)
    {
        if (unit.Unit.Equals(value.Unit))
        {
            var exact = value.Value;
            if (unit.Fractions && (exact.IsDecimal ? FractionText.Exactly((decimal)exact, FractionsOfInches) : FractionText.Exactly(Kept((double)exact), FractionsOfInches)) is { } fraction) return fraction;
            if (units == Units.AsGiven) return exact.IsDecimal ? ((decimal)exact).ToString("0.#############################", CultureInfo.InvariantCulture) : TradeNumber.Write(Kept((double)exact));
        }

        return Math.Round(value.As(unit.Unit), unit.Digits).ToString("0.######", CultureInfo.InvariantCulture);
    }

    private double Kept(double number) => MostDigits is { } digits ? Math.Round(number, digits) : number;

    private TextReading<T> Refuse(string text) =>
        TextReading<T>.Refused(text.AsSpan().Trim().IsEmpty ? "nothing is written" : $"“{text.Trim()}” is not {Expected}");
}
