using System.Runtime.CompilerServices;

namespace PartsMatch.Fit.Judging;

/// <summary>What was worked out of one need or plate, by how it was. Threads may ask at once: then something is worked out twice, alike.</summary>
/// <remarks>It is asked several times a judgement, so that a dictionary would take longer than much of what it remembers.</remarks>
internal sealed class NeedMemory
{
    private const int Places = 64;

    private readonly Remembered?[] known = new Remembered?[Places];

    /// <summary>What a work comes to.</summary>
    public T Recall<TNeed, T>(Func<TNeed, T> work, TNeed need)
    {
        ref var place = ref known[RuntimeHelpers.GetHashCode(work) % Places];
        for (var one = Volatile.Read(ref place); one is not null; one = one.Next)
        {
            if (ReferenceEquals(one.Work, work)) return Unsafe.As<Remembered<T>>(one).Value;
        }

        // Somebody else may read what is remembered.
        using var read = Reason.Read();
        return Add(ref place, work, work(need));
    }

    private static T Add<T>(ref Remembered? place, Delegate work, T value)
    {
        while (true)
        {
            var next = Volatile.Read(ref place);
            if (Interlocked.CompareExchange(ref place, new Remembered<T>(work, value, next), next) == next) return value;
        }
    }

    private abstract class Remembered(Delegate work, Remembered? next)
    {
        public Delegate Work => work;

        public Remembered? Next => next;
    }

    /// <summary>A null is something known as well.</summary>
    private sealed class Remembered<T>(Delegate work, T value, Remembered? next) : Remembered(work, next)
    {
        public T Value => value;
    }
}
