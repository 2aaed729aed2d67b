using System.Runtime.InteropServices;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Engine;

/// <summary>Looks for the best parts: a prefix that fails, or cannot beat the worst of those found, takes its rows with it.</summary>
/// <remarks>Contributions are never positive, so that what a prefix shows bounds what every part that begins with it shows.</remarks>
[StructLayout(LayoutKind.Auto)]
internal struct RankingWalk<TPrefix>(Catalogue catalogue, RankingQuery query, TPrefix prefix, SortKey? after, BestParts<SortKey> best) : IWalk
    where TPrefix : struct, IPrefix
{
    private readonly PartFit[] fits = new PartFit[catalogue.Facets.Length + 1];
    private readonly PartFit worstFit = query.Include is { Count: > 0 } include ? include.Max() : PartFit.CantTellYet;
    private readonly int leftOut = query.LeftOut is null ? -1 : catalogue.Find(query.LeftOut) ?? -1;
    private int leastPercent;

    /// <inheritdoc/>
    public readonly bool Enter(int depth, int aspect, int code)
    {
        var fit = fits[depth + 1] = prefix.Enter(depth, aspect, code);
        return fit != PartFit.DoesntFit && fit <= worstFit && (leastPercent == 0 || prefix.MayShow(depth + 1, leastPercent));
    }

    /// <inheritdoc/>
    public readonly bool IsWanted(int part, int place, int depth) =>
        catalogue.StateOf(part).Place == place && part != leftOut && (!best.IsFull || best.Admits(KeyOf(part, depth)));

    /// <inheritdoc/>
    public void Take(int part, int place)
    {
        if (query.Include?.Contains(fits[^1]) == false) return;
        var key = KeyOf(part, catalogue.Facets.Length);
        if (after is { } last && SortKey.BestFirst.Compare(key, last) <= 0) return;
        best.Offer(place, key);
        if (best.IsFull) leastPercent = best.Worst.Percent;
    }

    private readonly SortKey KeyOf(int part, int depth) => new(prefix.PercentAt(depth), catalogue.OfferOf(part));
}
