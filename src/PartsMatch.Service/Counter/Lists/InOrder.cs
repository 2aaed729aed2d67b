using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace PartsMatch.Service.Counter.Lists;

/// <summary>Works a list out on all cores: answers come in its order, each as soon as it and those before it are known, and equal entries are worked out once.</summary>
/// <remarks>Memory is bounded: few entries are under way at once, and an answer is held until the last entry that shares it has come, no longer.</remarks>
internal static class InOrder
{
    /// <summary>How many entries are under way: enough that a slow one keeps no core idle, few enough that other requests do not wait long behind them.</summary>
    private static readonly int MostUnderWay = 16 * Environment.ProcessorCount;

    /// <param name="entries">The list; gone through twice.</param>
    /// <param name="keyOf">What entries share whose answers are the same.</param>
    /// <param name="work">Answers one entry; on many threads at once.</param>
    /// <param name="stop">Ends it.</param>
    public static async IAsyncEnumerable<(TEntry Entry, TAnswer Answer)> AnswerAsync<TEntry, TAnswer>(
        IEnumerable<TEntry> entries, Func<TEntry, string> keyOf, Func<TEntry, TAnswer> work, [EnumeratorCancellation] CancellationToken stop)
    {
        var shared = new SharedWork<TAnswer>(entries.Select(keyOf));
        var underWay = new Queue<(TEntry Entry, Task<TAnswer> Answer)>();
        foreach (var (at, entry) in entries.Index())
        {
            stop.ThrowIfCancellationRequested();
            underWay.Enqueue((entry, shared.Begin(at, () => work(entry), stop)));
            while (underWay.Count >= MostUnderWay || (underWay.TryPeek(out var oldest) && oldest.Answer.IsCompleted))
            {
                var (next, answer) = underWay.Dequeue();
                yield return (next, await answer);
            }
        }

        while (underWay.TryDequeue(out var left)) yield return (left.Entry, await left.Answer);
    }

    private sealed class SharedWork<TAnswer>
    {
        private readonly List<Share> _shares = [];

        public SharedWork(IEnumerable<string> keys)
        {
            var byKey = new Dictionary<string, Share>(StringComparer.Ordinal);
            foreach (var key in keys)
            {
                ref var share = ref CollectionsMarshal.GetValueRefOrAddDefault(byKey, key, out _);
                (share ??= new()).Left++;
                _shares.Add(share);
            }
        }

        /// <summary>The work for the entry in a place of the list: that which was begun for its key before, if any.</summary>
        public Task<TAnswer> Begin(int at, Func<TAnswer> work, CancellationToken stop)
        {
            var share = _shares[at];
            var begun = share.Begun ?? Task.Run(work, stop);
            share.Begun = --share.Left > 0 ? begun : null;
            return begun;
        }

        /// <summary>What the entries of one key share: how many of them are to come, and what was begun for those before. The keys, which may be long, are not kept.</summary>
        private sealed class Share
        {
            public int Left { get; set; }

            public Task<TAnswer>? Begun { get; set; }
        }
    }
}
