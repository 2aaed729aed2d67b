using System.Collections.Concurrent;

namespace PartsMatch.Fit.Judging;

/// <summary>What was worked out of one need, by how it was. Threads may ask at once: then something is worked out twice, alike.</summary>
internal sealed class NeedMemory
{
    private readonly ConcurrentDictionary<Delegate, object> known = new(ReferenceEqualityComparer.Instance);

    /// <summary>What a work comes to.</summary>
    public T Recall<TNeed, T>(Func<TNeed, T> work, TNeed need) =>
        known.TryGetValue(work, out var found) ? ((Remembered<T>)found).Value : Work(work, need);

    private T Work<TNeed, T>(Func<TNeed, T> work, TNeed need) =>
        ((Remembered<T>)known.GetOrAdd(work, new Remembered<T>(work(need)))).Value;

    /// <summary>A null is something known as well.</summary>
    private sealed record Remembered<T>(T Value);
}
