namespace PartsMatch.Ranking.Engine;

/// <summary>The best so many parts seen so far, by a key.</summary>
/// <typeparam name="TKey">What they are sorted by.</typeparam>
/// <param name="most">How many are kept, at least 1.</param>
/// <param name="bestFirst">The order.</param>
internal sealed class BestParts<TKey>(int most, IComparer<TKey> bestFirst)
    where TKey : struct
{
    private readonly PriorityQueue<int, TKey> queue = new(Comparer<TKey>.Create((one, other) => bestFirst.Compare(other, one)));
    private TKey worst;

    /// <summary>Whether only a better part than the worst one gets in now.</summary>
    public bool IsFull { get; private set; }

    /// <summary>The key of the worst one that is kept; of none while they are not <see cref="IsFull"/>. A walk asks at every step.</summary>
    public ref readonly TKey Worst => ref worst;

    /// <summary>Where the worst one lies that is kept.</summary>
    public int WorstPlace => queue.Peek();

    /// <summary>Whether a part with this key, or any better one, would get in.</summary>
    public bool Admits(TKey key) => !IsFull || bestFirst.Compare(key, worst) < 0;

    /// <summary>Keeps a part, if it is good enough.</summary>
    /// <param name="place">Where it lies.</param>
    /// <param name="key">Its key.</param>
    public void Offer(int place, TKey key)
    {
        if (!Admits(key)) return;
        if (IsFull) queue.EnqueueDequeue(place, key);
        else queue.Enqueue(place, key);
        IsFull = queue.Count == most;
        if (IsFull) queue.TryPeek(out _, out worst);
    }

    /// <summary>Takes all of them out, the best first.</summary>
    public IReadOnlyList<(int Place, TKey Key)> Taken()
    {
        var all = new (int, TKey)[queue.Count];
        while (queue.TryDequeue(out var place, out var key)) all[queue.Count] = (place, key);
        return all;
    }
}
