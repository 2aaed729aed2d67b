namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Reads values by the fields' forms, within what plates of the family print.</summary>
internal sealed class ValueReader(Lexicon lexicon, PlateUnits units)
{
    /// <summary>No figure with its unit is longer; longer ones are not tried.</summary>
    private const int LongestValue = 60;

    /// <summary>A value as its form writes it; null when the text is none.</summary>
    /// <param name="field">The field.</param>
    /// <param name="text">The text, with or without a unit.</param>
    /// <param name="unit">The unit to try when it has none.</param>
    public string? Read(Field field, ReadOnlySpan<char> text, string? unit)
    {
        if (text.Length > LongestValue) return null;
        unit = units.Meant(unit);
        var readings = lexicon.Readings.Of(field, unit);
        if (readings.TryGetValue(text, out var reading)) return reading;
        return lexicon.Readings.Keep(readings, text, Plain(field, text) is not { } given ? null : Try(field, given, unit) ?? InThousands(field, given, unit));
    }

    /// <summary>A word of the vocabulary where it stands, as its field writes it.</summary>
    public PlacedValue Placed(WordEntry word, int from, int to) => new(word.Field, Read(word.Field, word.Value, null) ?? word.Value, new Stretch(from, to));

    private string? Plain(Field field, ReadOnlySpan<char> text) => FigureText.For(field.Form.TakesFractions, lexicon.Tolerance is { } tolerance && tolerance != field ? Tolerances.WithoutShares(text.ToString(), lexicon.AnnouncesTolerance) : text);

    /// <summary>1,075 RPM: the comma that parts thousands, where a decimal one cannot be meant.</summary>
    private string? InThousands(Field field, string given, string? unit) =>
        FigureText.WithoutThousands(given) is { } whole && Try(field, given.Replace(',', '.'), unit) is null ? Try(field, whole, unit) : null;

    /// <summary>2 HOUR, 1/2".</summary>
    private static bool HasUnit(string given) => given.Any(char.IsLetter) || (given is [.., var last] && Characters.IsQuote(last));

    /// <summary>A figure without a unit has the one that was said, and no other: 2 HOUR are not two minutes.</summary>
    private string? Try(Field field, string given, string? unit) => unit is null || HasUnit(given)
        ? Try(field, given).Text ?? (unit is null ? null : Try(field, $"{given} {unit}").Text)
        : Try(field, $"{given} {unit}") switch
        {
            { Text: { } text } => text,
            _ when lexicon.UnitsOf(field).Contains(unit) => null,
            _ => Try(field, given).Text,
        };

    /// <summary>Why a text is no value of a field, in a sentence that quotes it as it was typed, without the unit that was tried with it unless the plate's other figures have it.</summary>
    /// <param name="field">The field.</param>
    /// <param name="text">The text, in plain signs.</param>
    /// <param name="unit">The unit to try when it has none.</param>
    /// <param name="typed">The text as it was typed.</param>
    public string Wrong(Field field, ReadOnlySpan<char> text, string? unit, string typed)
    {
        if (text.Length > LongestValue) return "the figure is longer than any on a plate";
        if (Plain(field, text) is not { } given) return $"“{typed}” may be one figure or several; write it with a decimal point";
        var meant = units.Meant(unit);
        var tried = meant is null || HasUnit(given) ? given : $"{given} {meant}";
        return Try(field, tried).Wrong?.Replace($"“{tried}”", meant == unit || tried == given ? $"“{typed}”" : $"“{typed} {meant}”", StringComparison.Ordinal) ?? $"“{typed}” is not placed";
    }

    private (string? Text, string? Wrong) Try(Field field, string text)
    {
        var value = field.Form.ReadAny(text);
        if (!value.IsRead) return (null, value.Wrong);
        var limit = lexicon.LimitOf(field);
        if (limit is not null && !limit.Holds(value.Value)) return (null, $"“{text}” is not {limit.Words}");

        // 5/370 hp has no fraction of the trade and no end of decimals: nobody prints that.
        var written = field.Form.WriteAny(value.Value, Quantities.Units.AsGiven);
        return field.Form.ReadAny(written).IsRead ? (written, null) : (null, $"“{text}” is no figure that plates print");
    }
}
