using System.Globalization;

namespace PartsMatch.Fit.Quantities;

/// <summary>A whole number: poles, shafts, speeds.</summary>
public sealed class CountForm : TextForm<int>
{
    private const int Most = 10_000;

    /// <inheritdoc/>
    public override string Expected => "a whole number, such as 6";

    /// <inheritdoc/>
    public override string Example => "6";

    /// <inheritdoc/>
    public override TextReading<int> Read(string text) =>
        int.TryParse(PlainSigns.In(text).Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count <= Most
            ? TextReading<int>.Of(count)
            : TextReading<int>.Refused($"“{text.Trim()}” is not {Expected}");

    /// <inheritdoc/>
    public override string Write(int value, Units units = Units.AsGiven) => value.ToString(CultureInfo.InvariantCulture);

    /// <inheritdoc/>
    public override Figure? FigureOf(object value, Units units) => new((int)value, null);
}

/// <summary>A number without a unit: service factor, power factor.</summary>
public sealed class FactorForm : TextForm<double>
{
    /// <inheritdoc/>
    public override string Expected => "a number, such as 1.15";

    /// <inheritdoc/>
    public override string Example => "1.15";

    /// <inheritdoc/>
    public override TextReading<double> Read(string text)
    {
        var rest = PlainSigns.In(text).AsSpan().Trim();
        return TradeNumber.TryRead(rest, fractions: false, signed: false, out var number, out var length) && length == rest.Length && number.Double is > 0 and <= 1e6
            ? TextReading<double>.Of(number.Double)
            : TextReading<double>.Refused($"“{text.Trim()}” is not {Expected}");
    }

    /// <inheritdoc/>
    public override string Write(double value, Units units = Units.AsGiven) => TradeNumber.Write(value);

    /// <inheritdoc/>
    public override Figure? FigureOf(object value, Units units) => new((double)value, null);
}

/// <summary>Yes or no.</summary>
public sealed class YesNoForm : TextForm<bool>
{
    /// <inheritdoc/>
    public override string Expected => "yes or no";

    /// <inheritdoc/>
    public override string Example => "yes";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Choices => ["yes", "no"];

    /// <inheritdoc/>
    public override TextReading<bool> Read(string text) => text.Trim().ToUpperInvariant() switch
    {
        "YES" or "Y" or "TRUE" or "1" => TextReading<bool>.Of(true),
        "NO" or "N" or "FALSE" or "0" => TextReading<bool>.Of(false),
        _ => TextReading<bool>.Refused($"“{text.Trim()}” is not {Expected}"),
    };

    /// <inheritdoc/>
    public override string Write(bool value, Units units = Units.AsGiven) => value ? "yes" : "no";
}

/// <summary>A few free words: a colour, a terminal, a code letter.</summary>
public sealed class WordingForm : TextForm<string>
{
    private const int Longest = 200;

    /// <inheritdoc/>
    public override string Expected => "a few words";

    /// <inheritdoc/>
    public override string Example => "brown lead";

    /// <inheritdoc/>
    public override TextReading<string> Read(string text)
    {
        var trimmed = text.Trim();
        if (trimmed.Length == 0) return TextReading<string>.Refused("nothing is written");
        return trimmed.Length <= Longest
            ? TextReading<string>.Of(trimmed)
            : TextReading<string>.Refused("the text is longer than 200 characters");
    }

    /// <inheritdoc/>
    public override string Write(string value, Units units = Units.AsGiven) => value;
}
