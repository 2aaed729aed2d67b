using System.Collections;
using System.Runtime.CompilerServices;

namespace PartsMatch.Fit.Quantities;

/// <summary>Several of a few choices, none twice: a motor that takes a belly band or studs. Equal when the same are chosen, in any order.</summary>
/// <typeparam name="T">The choices.</typeparam>
public sealed class Choices<T> : IReadOnlyList<T>, IEquatable<Choices<T>>
    where T : struct, Enum
{
    private readonly int[] all;

    /// <summary>Keeps the choices, each once, in the enum's order.</summary>
    public Choices(params IEnumerable<T> choices)
    {
        var numbers = new SortedSet<int>();
        foreach (var choice in choices) numbers.Add(Unsafe.BitCast<T, int>(choice));
        all = [.. numbers];
    }

    /// <inheritdoc/>
    public int Count => all.Length;

    /// <inheritdoc/>
    public T this[int index] => Unsafe.BitCast<int, T>(all[index]);

    /// <inheritdoc/>
    public bool Equals(Choices<T>? other) => other is not null && all.AsSpan().SequenceEqual(other.all);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Choices<T>);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = default(HashCode);
        foreach (var choice in all) hash.Add(choice);
        return hash.ToHashCode();
    }

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator()
    {
        foreach (var choice in all) yield return Unsafe.BitCast<int, T>(choice);
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}

/// <summary>Several choices, with commas between: belly band, through-bolt studs.</summary>
/// <typeparam name="T">The choices.</typeparam>
public sealed class ChoicesForm<T> : TextForm<Choices<T>>
    where T : struct, Enum
{
    private readonly EnumForm<T> one = new();

    /// <summary>Makes the form.</summary>
    public ChoicesForm() => Expected = $"one or several, with commas, of: {string.Join(", ", one.Choices)}";

    /// <inheritdoc/>
    public override string Expected { get; }

    /// <inheritdoc/>
    public override string Example => string.Join(", ", one.Choices.Take(2));

    /// <inheritdoc/>
    public override IReadOnlyList<string> Choices => one.Choices;

    /// <inheritdoc/>
    public override bool TakesSeveral => true;

    /// <inheritdoc/>
    public override bool JoinsSeveral => true;

    /// <inheritdoc/>
    public override IReadOnlyList<string> Words => one.Words;

    /// <inheritdoc/>
    public override TextReading<Choices<T>> Read(string text)
    {
        var chosen = new List<T>();
        foreach (var word in text.Split([',', ';'], StringSplitOptions.TrimEntries))
        {
            var reading = one.Read(word);
            if (!reading.IsRead) return TextReading<Choices<T>>.Refused(reading.Wrong!);
            chosen.Add(reading.Value);
        }

        return TextReading<Choices<T>>.Of(new(chosen));
    }

    /// <inheritdoc/>
    public override string Write(Choices<T> value, Units units = Units.AsGiven) => string.Join(", ", value.Select(choice => one.Write(choice, units)));
}
