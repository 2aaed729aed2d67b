namespace PartsMatch.Ranking.Engine;

/// <summary>The best so many parts seen so far, by a key.</summary>
/// <typeparam name="TKey">What they are sorted by.</typeparam>
/// <param name="most">How many are kept, at least 1.</param>
/// <param name="bestFirst">The order.</param>
internal sealed class BestParts<TKey>(int most, IComparer<TKey> bestFirst)
{
    private readonly PriorityQueue<int, TKey> queue = new(Comparer<TKey>.Create((one, other) => bestFirst.Compare(other, one)));

    /// <summary>Whether only a better part than the worst one gets in now.</summary>
    public bool IsFull => queue.Count == most;

    /// <summary>The key of the worst one that is kept.</summary>
    public TKey Worst => queue.TryPeek(out _, out var key) ? key : throw new InvalidOperationException("No part is kept yet.");

    /// <summary>Where the worst one lies that is kept.</summary>
    public int WorstPlace => queue.Peek();

    /// <summary>Whether a part with this key, or any better one, would get in.</summary>
    public bool Admits(TKey key) => !IsFull || bestFirst.Compare(key, Worst) < 0;

    /// <summary>Keeps a part, if it is good enough.</summary>
    /// <param name="place">Where it lies.</param>
    /// <param name="key">Its key.</param>
    public void Offer(int place, TKey key)
    {
        if (!IsFull) queue.Enqueue(place, key);
        else if (Admits(key)) queue.EnqueueDequeue(place, key);
    }

    /// <summary>Takes all of them out, the best first.</summary>
    public IReadOnlyList<(int Place, TKey Key)> Taken()
    {
        var all = new (int, TKey)[queue.Count];
        while (queue.TryDequeue(out var place, out var key)) all[queue.Count] = (place, key);
        return all;
    }
}
