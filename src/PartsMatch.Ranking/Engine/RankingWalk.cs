using System.Runtime.InteropServices;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Engine;

/// <summary>Looks for the best parts: a prefix that fails, or cannot beat the worst of those found, takes its rows with it.</summary>
/// <remarks>Contributions are never positive, so that a sum over a prefix bounds the score of every part that begins with it.</remarks>
[StructLayout(LayoutKind.Auto)]
internal struct RankingWalk(Catalogue catalogue, Weights weights, RankingQuery query, Answers answers, SortKey? after, BestParts<SortKey> best) : IWalk
{
    private readonly Score[] sums = new Score[catalogue.Facets.Length + 1];
    private readonly PartFit[] fits = new PartFit[catalogue.Facets.Length + 1];
    private readonly PartFit worstFit = query.Include is { Count: > 0 } include ? include.Max() : PartFit.CantTellYet;
    private readonly int leftOut = query.LeftOut is null ? -1 : catalogue.Find(query.LeftOut) ?? -1;
    private Score least = new(long.MinValue);

    /// <inheritdoc/>
    public readonly bool Enter(int depth, int aspect, int code)
    {
        var answer = answers.At(aspect, code);
        var sum = sums[depth] + answer.Contribution;
        var fit = answer.Fit > fits[depth] ? answer.Fit : fits[depth];
        if (fit == PartFit.DoesntFit || fit > worstFit || sum.Millionths < least.Millionths) return false;
        (sums[depth + 1], fits[depth + 1]) = (sum, fit);
        return true;
    }

    /// <inheritdoc/>
    public readonly bool IsWanted(int part, int place, int depth)
    {
        var state = catalogue.StateOf(part);
        return state.Place == place && part != leftOut && (!best.IsFull || best.Admits(KeyOf(part, state, sums[depth])));
    }

    /// <inheritdoc/>
    public void Take(int part, int place)
    {
        if (query.Include?.Contains(fits[^1]) == false) return;
        var key = KeyOf(part, catalogue.StateOf(part), sums[^1]);
        if (after is { } last && SortKey.BestFirst.Compare(key, last) <= 0) return;
        best.Offer(place, key);
        if (best.IsFull) least = weights.LeastScoreOf(best.Worst.Percent);
    }

    private readonly SortKey KeyOf(int part, PartState state, Score score)
    {
        var stock = catalogue.StockOf(part);
        return new(weights.PercentOf(score), SortKey.SupplyOf(state.Standing == Standing.Made, stock.OnHand), stock.Price, catalogue.NumberOf(part));
    }
}
