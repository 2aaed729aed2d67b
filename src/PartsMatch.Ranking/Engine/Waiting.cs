using System.Runtime.InteropServices;

namespace PartsMatch.Ranking.Engine;

/// <summary>What a query may have to look at yet, by the percent that it can show at most.</summary>
internal sealed class Waiting
{
    private readonly List<WaitingPrefix>?[] prefixes = new List<WaitingPrefix>?[101];
    private readonly List<(WaitingPart Part, uint RoughOffer)>?[] parts = new List<(WaitingPart, uint)>?[101];

    /// <summary>Lets all rows wait that begin with a prefix.</summary>
    public void Add(int percent, WaitingPrefix prefix) => (prefixes[percent] ??= []).Add(prefix);

    /// <summary>Lets a part wait.</summary>
    public void Add(int percent, WaitingPart part, uint roughOffer) => (parts[percent] ??= []).Add((part, roughOffer));

    /// <summary>The prefixes that wait for a percent.</summary>
    public IReadOnlyList<WaitingPrefix> Prefixes(int percent) => prefixes[percent] ?? [];

    /// <summary>The parts that wait for a percent, the better offer first.</summary>
    public PriorityQueue<WaitingPart, uint> Parts(int percent) => new(parts[percent] ?? []);
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
