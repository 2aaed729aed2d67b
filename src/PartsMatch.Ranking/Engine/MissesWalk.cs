using System.Runtime.InteropServices;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Engine;

/// <summary>Looks for the parts with so many failed aspects, no more and no fewer: the same walk, with failures to spend.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly struct MissesWalk(Catalogue catalogue, Answers answers, int failures, int leftOut, BestParts<MissKey> best) : IWalk
{
    private readonly Score[] sums = new Score[catalogue.Facets.Length + 1];
    private readonly int[] spent = new int[catalogue.Facets.Length + 1];

    /// <inheritdoc/>
    public bool Enter(int depth, int aspect, int code, int at)
    {
        var answer = answers.At(aspect, code);
        sums[depth + 1] = sums[depth] + answer.Contribution;
        spent[depth + 1] = spent[depth] + (answer.Fit == PartFit.DoesntFit ? 1 : 0);
        return spent[depth + 1] <= failures && !(best.IsFull && sums[depth + 1].Millionths < best.Worst.Score.Millionths);
    }

    /// <inheritdoc/>
    public bool IsWanted(int place, int depth) => catalogue.IsCurrent(place) && place != leftOut && best.Admits(KeyOf(place, sums[depth]));

    /// <inheritdoc/>
    public void Take(int place)
    {
        if (spent[^1] == failures) best.Offer(place, KeyOf(place, sums[^1] + answers.PartTermAt(place)));
    }

    private MissKey KeyOf(int place, Score score) => new(score, catalogue.OfferAt(place));
}

/// <summary>What parts with equally many failures are sorted by: the score of the rest, supply, price (unknown last), number.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct MissKey(Score Score, OfferKey Offer)
{
    /// <summary>Orders the better before the worse.</summary>
    public static Comparer<MissKey> BestFirst { get; } = Comparer<MissKey>.Create((one, other) =>
    {
        var order = other.Score.Millionths.CompareTo(one.Score.Millionths);
        return order == 0 ? OfferKey.BestFirst.Compare(one.Offer, other.Offer) : order;
    });
}
