using System.Runtime.InteropServices;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Engine;

/// <summary>Gathers the parts that may be the best by all but their costliest facets: a prefix that fails, or cannot beat the worst of those gathered or found, takes its rows with it.</summary>
/// <remarks>Contributions are never positive, so that what a prefix shows bounds what every part that begins with it shows.</remarks>
[StructLayout(LayoutKind.Auto)]
internal readonly struct GatheringWalk<TPrefix>(Catalogue catalogue, TPrefix prefix, PartFit worstFit, int leftOut, SortKey? beyond, BestParts<SortKey> gathered, BestParts<SortKey> found) : IWalk
    where TPrefix : struct, IPrefix
{
    /// <inheritdoc/>
    public bool Enter(int depth, int aspect, int code)
    {
        if (prefix.Enter(depth, aspect, code) > worstFit) return false;
        var least = Math.Max(gathered.IsFull ? gathered.Worst.Percent : 0, found.IsFull ? found.Worst.Percent : 0);
        return least == 0 || prefix.MayShow(depth + 1, least);
    }

    /// <inheritdoc/>
    public bool IsWanted(int part, int place, int depth)
    {
        if (catalogue.StateOf(part).Place != place || part == leftOut) return false;
        var percent = prefix.PercentAt(depth);
        if (gathered.IsFull && percent < gathered.Worst.Percent) return false;
        var key = new SortKey(percent, catalogue.OfferOf(part));
        if (beyond is not { } last || SortKey.BestFirst.Compare(key, last) > 0) gathered.Offer(place, key);
        return false;
    }

    /// <inheritdoc/>
    public void Take(int part, int place) => throw new InvalidOperationException("No part is wanted further than it was gathered.");
}
