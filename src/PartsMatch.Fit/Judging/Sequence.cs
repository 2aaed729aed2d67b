using System.Collections;
using System.Runtime.CompilerServices;

namespace PartsMatch.Fit.Judging;

/// <summary>A few values in order, equal when all of them are: what a facet holds when a part has several taps or speeds. The default is empty.</summary>
/// <typeparam name="T">A plain value.</typeparam>
[CollectionBuilder(typeof(Sequence), nameof(Sequence.Of))]
public readonly struct Sequence<T> : IReadOnlyList<T>, IEquatable<Sequence<T>>
    where T : struct, IEquatable<T>
{
    private readonly T[]? all;

    internal Sequence(ReadOnlySpan<T> values) => all = values.IsEmpty ? null : values.ToArray();

    /// <inheritdoc/>
    public int Count => all?.Length ?? 0;

    /// <inheritdoc/>
    public T this[int index] => all.AsSpan()[index];

    /// <summary>The values, to be walked without an enumerator.</summary>
    public ReadOnlySpan<T> AsSpan() => all;

    /// <summary>Whether all values are equal, in order.</summary>
    public static bool operator ==(Sequence<T> left, Sequence<T> right) => left.Equals(right);

    /// <summary>Whether any value differs.</summary>
    public static bool operator !=(Sequence<T> left, Sequence<T> right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(Sequence<T> other) => all.AsSpan().SequenceEqual(other.all);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Sequence<T> other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = default(HashCode);
        foreach (var value in all.AsSpan()) hash.Add(value);
        return hash.ToHashCode();
    }

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)(all ?? [])).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}

/// <summary>Makes sequences.</summary>
public static class Sequence
{
    /// <summary>A sequence of these values.</summary>
    public static Sequence<T> Of<T>(ReadOnlySpan<T> values)
        where T : struct, IEquatable<T> => new(values);
}
