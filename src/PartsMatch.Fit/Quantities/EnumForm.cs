using System.Runtime.CompilerServices;

namespace PartsMatch.Fit.Quantities;

/// <summary>A choice of a few, read and written by the words on its members.</summary>
/// <typeparam name="T">An enum of whole numbers of the usual size, whose every member carries <see cref="WordsAttribute"/>.</typeparam>
public sealed class EnumForm<T> : TextForm<T>
    where T : struct, Enum
{
    private readonly ChoiceWords words = ChoiceWords.Of(typeof(T));

    /// <inheritdoc/>
    public override string Expected => words.Expected;

    /// <inheritdoc/>
    public override string Example => words.Written[0];

    /// <inheritdoc/>
    public override IReadOnlyList<string> Choices => words.Written;

    /// <inheritdoc/>
    public override IReadOnlyList<string> Words => words.All;

    /// <inheritdoc/>
    public override TextReading<T> Read(string text) => words.Find(text) is { } number ? TextReading<T>.Of(Unsafe.BitCast<int, T>(number)) : TextReading<T>.Refused(words.Wrong(text));

    /// <inheritdoc/>
    public override string Write(T value, Units units = Units.AsGiven) => words.WrittenOf(Unsafe.BitCast<T, int>(value));
}
