using System.Runtime.InteropServices;

namespace PartsMatch.Ranking.Engine;

/// <summary>What a query may have to look at yet, by the percent that it can show at most.</summary>
/// <remarks>A thread uses the same one for query after query: there are hundreds to wait in each, and to make room for them anew took longer than to walk.</remarks>
internal sealed class Waiting : IDisposable
{
    /// <summary>One that had to hold more is not used again, so that one wild query does not hold its memory for good.</summary>
    private const int MostKept = 100_000;

    [ThreadStatic]
    private static Waiting? spare;

    private readonly List<WaitingPrefix>[] prefixes = [.. Enumerable.Range(0, 100).Select(_ => new List<WaitingPrefix>())];
    private readonly List<(WaitingPart Part, uint RoughOffer)>[] parts = [.. Enumerable.Range(0, 100).Select(_ => new List<(WaitingPart, uint)>())];
    private readonly PriorityQueue<WaitingPart, uint> best = new();

    private Waiting()
    {
    }

    /// <summary>One in which nothing waits.</summary>
    public static Waiting Empty()
    {
        var empty = spare ?? new();
        spare = null;
        return empty;
    }

    /// <summary>Lets all rows wait that begin with a prefix.</summary>
    public void Add(int percent, WaitingPrefix prefix) => prefixes[percent].Add(prefix);

    /// <summary>Lets a part wait.</summary>
    public void Add(int percent, WaitingPart part, uint roughOffer) => parts[percent].Add((part, roughOffer));

    /// <summary>The prefixes that wait for a percent.</summary>
    public List<WaitingPrefix> Prefixes(int percent) => prefixes[percent];

    /// <summary>The parts that wait for a percent, the better offer first; until it is asked again.</summary>
    public PriorityQueue<WaitingPart, uint> Parts(int percent)
    {
        best.Clear();
        best.EnqueueRange(parts[percent]);
        return best;
    }

    /// <summary>Lets nothing wait any more.</summary>
    public void Dispose()
    {
        var held = 0;
        foreach (var list in prefixes)
        {
            held += list.Count;
            list.Clear();
        }

        foreach (var list in parts)
        {
            held += list.Count;
            list.Clear();
        }

        if (held <= MostKept) spare = this;
    }
}

/// <summary>What rows begin with whose turn has not come.</summary>
/// <param name="Prefix">What they begin with.</param>
/// <param name="Known">What is known of it.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct WaitingPrefix(Prefix Prefix, Begun Known);

/// <summary>A part some of whose facets were judged.</summary>
/// <param name="Place">Its row.</param>
/// <param name="Depth">How many of its facets, in the order in which rows are sorted by them.</param>
/// <param name="Known">What is known of them.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct WaitingPart(int Place, int Depth, Begun Known);
