using System.Diagnostics.CodeAnalysis;

namespace PartsMatch.Fit.Quantities;

/// <summary>What reading a text gave: a value, or why there is none.</summary>
/// <param name="Value">The value; null (or default) exactly when <paramref name="Wrong"/> is given.</param>
/// <param name="Wrong">What is wrong with the text, as a sentence a person can act on; null when it was read.</param>
/// <typeparam name="T">The type that was asked for.</typeparam>
public readonly record struct TextReading<T>(T? Value, string? Wrong)
    where T : notnull
{
    /// <summary>True when there is a value.</summary>
    [MemberNotNullWhen(true, nameof(Value))]
    [MemberNotNullWhen(false, nameof(Wrong))]
    public bool IsRead => Wrong is null;

    /// <summary>A text that was read.</summary>
    public static TextReading<T> Of(T value) => new(value, null);

    /// <summary>A text that was not read, and why.</summary>
    public static TextReading<T> Refused(string wrong) => new(default, wrong);
}
