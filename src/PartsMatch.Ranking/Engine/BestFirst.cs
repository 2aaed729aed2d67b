using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Engine;

/// <summary>Finds the best parts, judging their costliest facets only where they may win: the likeliest so far comes first, and once it cannot beat the worst of those found, none can.</summary>
/// <param name="catalogue">The parts.</param>
/// <param name="query">What is asked.</param>
/// <param name="prefix">What is known of parts that begin alike.</param>
/// <param name="after">The key of the last part seen.</param>
internal sealed class BestFirst<TPrefix>(Catalogue catalogue, RankingQuery query, TPrefix prefix, SortKey? after)
    where TPrefix : struct, IPrefix
{
    /// <summary>So many are gathered at first, however few are asked for: a walk costs more than to keep some that are not needed.</summary>
    private const int Least = 16;

    /// <summary>When all that were gathered in one walk were judged and more may win, another walk gathers so many times as many of the next.</summary>
    private const int More = 8;

    private readonly PartFit worstFit = query.Include?.Where(fit => fit != PartFit.DoesntFit).DefaultIfEmpty().Max() ?? PartFit.CantTellYet;
    private readonly int leftOut = catalogue.LeftOut(query.LeftOut);

    /// <summary>How many rows were looked at.</summary>
    public int Looked { get; private set; }

    /// <summary>The best parts, the best first.</summary>
    /// <param name="most">How many, at least 1.</param>
    public IReadOnlyList<(int Place, SortKey Key)> Find(int most)
    {
        var found = new BestParts<SortKey>(most, SortKey.BestFirst);
        SortKey? beyond = null;
        for (var batch = Math.Max(most, Least); ; batch = Math.Min(batch, int.MaxValue / More) * More)
        {
            var gathered = new BestParts<SortKey>(batch, SortKey.BestFirst);
            var walk = new GatheringWalk<TPrefix>(catalogue, prefix, worstFit, leftOut, beyond, gathered, found);
            Looked += catalogue.Walk(ref walk);
            var isLast = !gathered.IsFull;
            foreach (var (place, key) in gathered.Taken())
            {
                if (!found.Admits(key)) return found.Taken();
                if (Judge(place, key.Offer) is { } judged && (after is not { } last || SortKey.BestFirst.Compare(judged, last) > 0)) found.Offer(place, judged);
                beyond = key;
            }

            if (isLast) return found.Taken();
        }
    }

    /// <summary>The key of a part with all its facets; null when it is not wanted.</summary>
    private SortKey? Judge(int place, OfferKey offer)
    {
        var (depth, fit) = (0, PartFit.DropIn);
        foreach (var aspect in catalogue.Rows.Aspects)
        {
            fit = prefix.Enter(depth++, aspect, catalogue.CodeAt(place, aspect));
            if (fit > worstFit) return null;
        }

        return query.Include?.Contains(fit) == false ? null : new(prefix.PercentAt(depth), offer);
    }
}
