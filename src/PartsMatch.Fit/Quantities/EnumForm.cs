using System.Buffers;
using System.Reflection;

namespace PartsMatch.Fit.Quantities;

/// <summary>A choice of a few, read and written by the words on its members.</summary>
/// <typeparam name="T">An enum whose every member carries <see cref="WordsAttribute"/>.</typeparam>
public sealed class EnumForm<T> : TextForm<T>
    where T : struct, Enum
{
    private static readonly (T Value, WordsAttribute Words)[] Members = [.. Enum.GetValues<T>()
        .Select(value => (value, typeof(T).GetField(value.ToString())!.GetCustomAttribute<WordsAttribute>()
            ?? throw new InvalidOperationException($"{typeof(T).Name}.{value} has no words.")))];

    /// <summary>Those that nearly all words are made of.</summary>
    private static readonly SearchValues<char> LettersAndDigits = SearchValues.Create("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789");

    private static readonly Dictionary<string, T> ByWord = Members
        .SelectMany(member => member.Words.Also.Append(member.Words.Written).Select(word => (Key: Plain(word), member.Value)))
        .DistinctBy(pair => (pair.Key, pair.Value))
        .ToDictionary(pair => pair.Key, pair => pair.Value, StringComparer.Ordinal);

    /// <summary>Every word for a choice, as written.</summary>
    public static IEnumerable<(string Word, T Value)> AllWords => Members.SelectMany(member => member.Words.Also.Prepend(member.Words.Written).Select(word => (word, member.Value)));

    /// <inheritdoc/>
    public override string Expected { get; } = $"one of: {string.Join(", ", Members.Select(member => member.Words.Written))}";

    /// <inheritdoc/>
    public override string Example => Members[0].Words.Written;

    /// <inheritdoc/>
    public override IReadOnlyList<string> Choices { get; } = [.. Members.Select(member => member.Words.Written)];

    /// <inheritdoc/>
    public override IReadOnlyList<string> Words { get; } = [.. AllWords.Select(word => word.Word)];

    /// <inheritdoc/>
    public override TextReading<T> Read(string text) =>
        ByWord.TryGetValue(Plain(text), out var value) ? TextReading<T>.Of(value)
        : TextReading<T>.Refused(string.IsNullOrWhiteSpace(text) ? "nothing is written" : $"“{text.Trim()}” is not {Expected}");

    /// <inheritdoc/>
    public override string Write(T value, Units units = Units.AsGiven) => Members.First(member => EqualityComparer<T>.Default.Equals(member.Value, value)).Words.Written;

    /// <summary>Case, spaces, dashes and dots do not tell words apart.</summary>
    private static string Plain(string text) =>
        (text.AsSpan().ContainsAnyExcept(LettersAndDigits) ? string.Concat(text.Where(char.IsLetterOrDigit)) : text).ToUpperInvariant();
}
