namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Reads values by the fields' forms, within what plates of the family print; remembers what it read, for the same few characters are tried again and again.</summary>
internal sealed class ValueReader(Lexicon lexicon)
{
    /// <summary>No figure with its unit is longer; longer ones are not tried.</summary>
    private const int LongestValue = 60;

    private readonly Dictionary<(Field Field, string Text), (string? Text, string? Wrong)> known = [];

    /// <summary>A value as its form writes it; null when the text is none.</summary>
    /// <param name="field">The field.</param>
    /// <param name="text">The text, with or without a unit.</param>
    /// <param name="unit">The unit to try when it has none.</param>
    public string? Read(Field field, ReadOnlySpan<char> text, string? unit)
    {
        if (text.Length > LongestValue) return null;
        var given = Characters.WriteOut(text);
        return Recall(field, given).Text ?? (unit is null ? null : Recall(field, $"{given} {unit}").Text);
    }

    /// <summary>Why a text is no value of a field.</summary>
    public string Wrong(Field field, ReadOnlySpan<char> text, string? unit)
    {
        if (text.Length > LongestValue) return "the figure is longer than any on a plate";
        var given = Characters.WriteOut(text);
        return (unit is null ? null : Recall(field, $"{given} {unit}").Wrong) ?? Recall(field, given).Wrong ?? $"“{given}” is not placed";
    }

    private (string? Text, string? Wrong) Recall(Field field, string text)
    {
        if (known.TryGetValue((field, text), out var reading)) return reading;
        var value = field.Form.ReadAny(text);
        var limit = lexicon.LimitOf(field);
        reading = !value.IsRead ? (null, value.Wrong)
            : limit is not null && !limit.Holds(value.Value) ? (null, $"“{text}” is not {limit.Words}")
            : (field.Form.WriteAny(value.Value, Quantities.Units.AsGiven), null);
        known.Add((field, text), reading);
        return reading;
    }
}
