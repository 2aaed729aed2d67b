using System.Buffers;

namespace PartsMatch.Ranking.Engine;

/// <summary>
/// What was known of prefixes that wait for their turn, for a need with unknowns: a sum and a share for each completion. To enter them once more from their first facet on took four tenths of a query whose facets were all judged before (docs/performance.md).
/// </summary>
/// <param name="completions">How many completions there are.</param>
internal sealed class KeptSums(int completions) : IDisposable
{
    /// <summary>More are not kept, but entered once more: some 13 MB at the usual number of completions.</summary>
    private const int Most = 1 << 15;

    private const int AtFirst = 256;

    private readonly int length = 2 * completions;
    private long[] figures = ArrayPool<long>.Shared.Rent(AtFirst * 2 * completions);
    private ulong[] passing = ArrayPool<ulong>.Shared.Rent(AtFirst);
    private int count;

    /// <summary>Keeps what is known of a prefix.</summary>
    /// <param name="passes">Which completions still pass.</param>
    /// <param name="sums">What was taken from the score of each.</param>
    /// <param name="shares">What each shows.</param>
    /// <returns>Where it is kept; null where it is not.</returns>
    public int? Keep(ulong passes, ReadOnlySpan<long> sums, ReadOnlySpan<long> shares)
    {
        if (count == Most) return null;
        if (count == passing.Length) passing = Grown(passing, count);
        if ((count + 1) * length > figures.Length) figures = Grown(figures, count * length);
        passing[count] = passes;
        sums.CopyTo(figures.AsSpan(count * length));
        shares.CopyTo(figures.AsSpan((count * length) + completions));
        return count++;
    }

    /// <summary>Takes up again what is kept.</summary>
    /// <returns>Which completions still pass.</returns>
    public ulong TakeUp(int kept, Span<long> sums, Span<long> shares)
    {
        figures.AsSpan(kept * length, completions).CopyTo(sums);
        figures.AsSpan((kept * length) + completions, completions).CopyTo(shares);
        return passing[kept];
    }

    /// <summary>Forgets all, and leaves the room to other queries.</summary>
    public void Dispose()
    {
        ArrayPool<long>.Shared.Return(figures);
        ArrayPool<ulong>.Shared.Return(passing);
        (figures, passing) = ([], []);
    }

    private static T[] Grown<T>(T[] full, int held)
    {
        var room = ArrayPool<T>.Shared.Rent(2 * full.Length);
        full.AsSpan(0, held).CopyTo(room);
        ArrayPool<T>.Shared.Return(full);
        return room;
    }
}
