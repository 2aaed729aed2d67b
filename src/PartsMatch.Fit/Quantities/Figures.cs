using System.Collections;

namespace PartsMatch.Fit.Quantities;

/// <summary>Figures that stand side by side on a plate, 1725/1140 rpm beside 5.4/2.8 A: one a rating row, paired by position. Equal when all are equal, in order.</summary>
/// <typeparam name="T">One figure.</typeparam>
public sealed class Figures<T> : IReadOnlyList<T>, IEquatable<Figures<T>>
    where T : notnull
{
    private readonly T[] all;

    /// <summary>Keeps the figures in the order given; there is at least one.</summary>
    /// <exception cref="ArgumentException">No figure is given: an unknown is null, not an empty list.</exception>
    public Figures(params IEnumerable<T> figures)
    {
        all = [.. figures];
        if (all.Length == 0) throw new ArgumentException("At least one figure is needed.", nameof(figures));
    }

    /// <inheritdoc/>
    public int Count => all.Length;

    /// <inheritdoc/>
    public T this[int index] => all[index];

    /// <summary>The figure of a rating row: its own, or the only one, which stands for every row.</summary>
    /// <param name="row">The row, from 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are several figures, but none of this row.</exception>
    public T Of(int row) => all.Length == 1 ? all[0] : row < all.Length ? all[row] : throw new ArgumentOutOfRangeException(nameof(row));

    /// <inheritdoc/>
    public bool Equals(Figures<T>? other) => other is not null && all.AsSpan().SequenceEqual(other.all, EqualityComparer<T>.Default);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Figures<T>);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = default(HashCode);
        foreach (var figure in all) hash.Add(figure);
        return hash.ToHashCode();
    }

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)all).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
