using System.Runtime.InteropServices;

namespace PartsMatch.Ranking.Engine;

/// <summary>The best so many parts seen so far, by a key.</summary>
/// <remarks>They are kept in order: a search that looks at the likeliest first offers them nearly so, and walks by row keep only a few.</remarks>
/// <typeparam name="TKey">What they are sorted by.</typeparam>
/// <param name="most">How many are kept, at least 1.</param>
/// <param name="bestFirst">The order.</param>
internal sealed class BestParts<TKey>(int most, IComparer<TKey> bestFirst)
    where TKey : struct
{
    private readonly List<(int Place, TKey Key)> inOrder = [];

    /// <summary>Whether only a better part than the worst one gets in now.</summary>
    public bool IsFull => inOrder.Count == most;

    /// <summary>The key of the worst one that is kept; there must be one. A walk asks at every step.</summary>
    public ref readonly TKey Worst => ref CollectionsMarshal.AsSpan(inOrder)[^1].Key;

    /// <summary>Where the worst one lies that is kept.</summary>
    public int WorstPlace => inOrder[^1].Place;

    /// <summary>All of them, the best first.</summary>
    public IReadOnlyList<(int Place, TKey Key)> All => inOrder;

    /// <summary>Whether a part with this key, or any better one, would get in.</summary>
    public bool Admits(TKey key) => !IsFull || IsBetter(key, inOrder.Count - 1);

    /// <summary>Keeps a part, if it is good enough.</summary>
    /// <param name="place">Where it lies.</param>
    /// <param name="key">Its key.</param>
    public void Offer(int place, TKey key)
    {
        if (!Admits(key)) return;
        if (IsFull) inOrder.RemoveAt(inOrder.Count - 1);
        inOrder.Insert(FirstWorse(key), (place, key));
    }

    private int FirstWorse(TKey key)
    {
        var (from, to) = (0, inOrder.Count);
        while (from < to)
        {
            var middle = (from + to) / 2;
            if (IsBetter(key, middle)) to = middle;
            else from = middle + 1;
        }

        return from;
    }

    private bool IsBetter(TKey key, int at) => bestFirst.Compare(key, CollectionsMarshal.AsSpan(inOrder)[at].Key) < 0;
}
