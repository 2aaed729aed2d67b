using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Engine;

/// <summary>Gathers the parts that may show so many percent by all but their costliest facets; a prefix that can only show less waits for its turn.</summary>
/// <remarks>A query enters some thousand prefixes and rows: what is done at each of them is inlined by name, since the runtime leaves half of it as calls, and they took a tenth of a query.</remarks>
[StructLayout(LayoutKind.Auto)]
internal readonly struct GatheringWalk<TPrefix>(Catalogue catalogue, TPrefix prefix, PartFit worstFit, int leftOut, int percent, Waiting waiting) : IWalk
    where TPrefix : struct, IPrefix
{
    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public bool Enter(int depth, int aspect, int code, int at)
    {
        if (prefix.Enter(depth, aspect, code) > worstFit) return false;
        if (prefix.MayShow(depth + 1, percent)) return true;
        waiting.Add(prefix.PercentAt(depth + 1), new WaitingPrefix(new(at, depth + 1), prefix.At(depth + 1)));
        return false;
    }

    /// <inheritdoc/>
    public bool IsWanted(int place, int depth)
    {
        if (catalogue.IsCurrent(place) && place != leftOut) waiting.Add(percent, new WaitingPart(place, depth, prefix.At(depth)), catalogue.Book.RoughOfferAt(place));
        return false;
    }

    /// <inheritdoc/>
    public void Take(int place) => throw new InvalidOperationException("No part is wanted further than it was gathered.");
}
