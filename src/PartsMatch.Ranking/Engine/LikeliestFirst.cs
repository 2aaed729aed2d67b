using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Engine;

/// <summary>
/// Finds the best parts, the likeliest first: what can show so many percent is judged before what can only show less, and of parts that may show the same those with the better offer first,
/// so that hardly any is judged that does not win.
/// </summary>
/// <remarks>
/// What is known of a prefix or of a part bounds what it can show, since contributions are never positive. As soon as it falls, it waits among those of its percent, and nothing that waits
/// is looked at again once enough parts were found that show more.
/// </remarks>
/// <param name="catalogue">The parts.</param>
/// <param name="query">What is asked.</param>
/// <param name="prefix">What is known of parts that begin alike.</param>
/// <param name="after">The key of the last part seen.</param>
/// <param name="hasPartTerms">Whether something is taken that belongs to no facet.</param>
internal sealed class LikeliestFirst<TPrefix>(Catalogue catalogue, RankingQuery query, TPrefix prefix, SortKey? after, bool hasPartTerms)
    where TPrefix : struct, IPrefix
{
    private readonly PartFit worstFit = query.Include?.Where(fit => fit != PartFit.DoesntFit).DefaultIfEmpty().Max() ?? PartFit.CantTellYet;
    private readonly int leftOut = catalogue.LeftOut(query.LeftOut);
    private readonly Waiting waiting = Waiting.Empty();

    /// <summary>How many depths a part has: its facets, and what belongs to it alone where that may take anything.</summary>
    private readonly int depths = catalogue.Rows.Aspects.Count + (hasPartTerms ? 1 : 0);

    /// <summary>How many prefixes and rows were looked at.</summary>
    public int Looked { get; private set; }

    /// <summary>The best parts, the best first; to be asked once.</summary>
    /// <param name="most">How many, at least 1.</param>
    public IReadOnlyList<(int Place, SortKey Key)> Find(int most)
    {
        using var nothingWaits = waiting;
        var found = new BestParts<SortKey>(most, SortKey.BestFirst);
        waiting.Add(prefix.PercentAt(0), default(WaitingPrefix));
        for (var row = 0; row < catalogue.Tail.All.Length; row++) Wait(prefix.PercentAt(0), catalogue.Rows.Count + row, 0);
        for (var percent = prefix.PercentAt(0); percent > 0 && !(found.IsFull && found.Worst.Percent > percent); percent--)
        {
            foreach (var begun in waiting.Prefixes(percent)) Gather(begun, percent);
            for (var parts = waiting.Parts(percent); parts.TryDequeue(out var part, out var offer);)
            {
                var worst = found.IsFull && found.Worst.Percent == percent ? catalogue.Book.RoughOfferAt(found.WorstPlace) : uint.MaxValue;
                if (offer > worst) break;
                if (offer == worst && !found.Admits(new(percent, catalogue.OfferAt(part.Place)))) continue;
                if (Judge(part, percent) is { } key && (after is not { } last || SortKey.BestFirst.Compare(key, last) > 0)) found.Offer(part.Place, key);
            }
        }

        return found.All;
    }

    /// <summary>Gathers the parts that begin with a prefix and may show as much as it does; what shows less waits.</summary>
    private void Gather(WaitingPrefix begun, int percent)
    {
        if (!prefix.TakeUp(begun.Prefix.Depth, begun.Known)) Enter(catalogue.Rows.FirstRow(begun.Prefix), begun.Prefix.Depth);
        var walk = new GatheringWalk<TPrefix>(catalogue, prefix, worstFit, leftOut, percent, waiting);
        Looked += catalogue.Rows.Walk(ref walk, begun.Prefix);
    }

    /// <summary>Judges a part further; its key when it shows as much as it might, null when it is not wanted, or waits.</summary>
    private SortKey? Judge(WaitingPart part, int percent)
    {
        if (!prefix.TakeUp(part.Depth, part.Known)) Enter(part.Place, part.Depth);
        var fit = part.Known.Fit;
        for (var depth = part.Depth; depth < depths; depth++)
        {
            fit = EnterNext(part.Place, depth);
            if (fit > worstFit) return null;
            if (prefix.MayShow(depth + 1, percent)) continue;
            Wait(prefix.PercentAt(depth + 1), part.Place, depth + 1);
            return null;
        }

        return query.Include?.Contains(fit) == false ? null : new(percent, catalogue.OfferAt(part.Place));
    }

    private void Wait(int percent, int place, int depth)
    {
        if (catalogue.IsCurrent(place) && place != leftOut) waiting.Add(percent, new WaitingPart(place, depth, prefix.At(depth)), catalogue.Book.RoughOfferAt(place));
    }

    /// <summary>Enters so many facets of the part in a place.</summary>
    private void Enter(int place, int depth)
    {
        for (var entered = 0; entered < depth; entered++) EnterNext(place, entered);
    }

    /// <summary>Enters the part's facet at a depth, or behind them all what belongs to it alone.</summary>
    private PartFit EnterNext(int place, int depth)
    {
        var aspects = catalogue.Rows.Aspects;
        if (depth < aspects.Count) return prefix.Enter(depth, aspects[depth], catalogue.CodeAt(place, aspects[depth]));
        return prefix.EnterPart(depth, place);
    }
}
