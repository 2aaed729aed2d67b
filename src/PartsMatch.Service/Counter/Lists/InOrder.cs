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
        foreach (var entry in entries)
        {
            stop.ThrowIfCancellationRequested();
            underWay.Enqueue((entry, shared.Begin(keyOf(entry), () => work(entry), stop)));
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
        private readonly Dictionary<string, int> _left = new(StringComparer.Ordinal);
        private readonly Dictionary<string, Task<TAnswer>> _begun = new(StringComparer.Ordinal);

        public SharedWork(IEnumerable<string> keys)
        {
            foreach (var key in keys) CollectionsMarshal.GetValueRefOrAddDefault(_left, key, out _)++;
        }

        /// <summary>The work for a key: that which was begun for it before, if any.</summary>
        public Task<TAnswer> Begin(string key, Func<TAnswer> work, CancellationToken stop)
        {
            if (!_begun.Remove(key, out var begun)) begun = Task.Run(work, stop);
            if (--_left[key] > 0) _begun.Add(key, begun);
            return begun;
        }
    }
}
