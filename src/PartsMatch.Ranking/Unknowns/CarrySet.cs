using System.Numerics;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;
using PartsMatch.Ranking.Engine;

namespace PartsMatch.Ranking.Unknowns;

/// <summary>One part to carry.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Stock">What is at hand, at what price.</param>
/// <param name="Share">The share of the machines that it surely fits, by what they count, 0 to 1.</param>
/// <param name="For">What the need may be where it fits.</param>
public sealed record CarriedPart(string Number, Stock Stock, double Share, IReadOnlyList<Need> For)
{
    /// <summary>What to bring besides for any of the needs that it is carried for; equal things once.</summary>
    /// <param name="family">Its family.</param>
    /// <param name="spec">Its spec.</param>
    public IReadOnlyList<KitItem> Kit(Family family, Spec spec) =>
        [.. For.SelectMany(need => family.NotesFor(need, spec, family.Judge(need, spec), []).Kit).GroupBy(item => item.What, StringComparer.Ordinal).Select(same => same.MaxBy(item => item.Quantity)!)];
}

/// <summary>What to carry when the plate cannot be read: the smallest set of parts of which one fits nearly whatever the old part was.</summary>
/// <remarks>A part that may fit, but of which nobody can tell, is no help up a ladder: it counts where all that decides is met, or where what cannot be told is nothing that tells it from the old part.</remarks>
/// <param name="Parts">The parts, the one that fits most first. Empty when nothing is open, or when of nothing it can be told that it fits.</param>
/// <param name="Machines">How many known machines it rests on.</param>
/// <param name="Reached">The share of them that one of the parts fits, by what they count.</param>
/// <param name="IsSmallest">Whether there is surely no smaller set. Else the parts looked at were a choice of very many, or looking for fewer took too long (<see cref="Cover"/>).</param>
public sealed record CarrySet(IReadOnlyList<CarriedPart> Parts, int Machines, double Reached, bool IsSmallest)
{
    /// <summary>The share of machines that is covered when nothing else is asked.</summary>
    public const double UsualShare = 0.95;

    /// <summary>Of parts that may fit for the same completions, so many are looked at: the best to have.</summary>
    private const int MostAlike = 16;

    /// <summary>For every completion, so many of the kinds of parts that may fit for it and for most others are looked at.</summary>
    private const int MostKinds = 32;

    /// <summary>Finds the set.</summary>
    /// <param name="catalogue">The parts.</param>
    /// <param name="weights">What their shortcomings cost; they decide nothing here.</param>
    /// <param name="need">The need.</param>
    /// <param name="completions">What it may be.</param>
    /// <param name="atLeast">The share of machines to be covered, 0 to 1; as many as can be when that is fewer.</param>
    /// <param name="leftOut">As in a <see cref="RankingQuery"/>.</param>
    public static CarrySet Of(Catalogue catalogue, Weights weights, Need need, Completions completions, double atLeast = UsualShare, string? leftOut = null)
    {
        if (atLeast is not (>= 0 and <= 1)) throw new ArgumentOutOfRangeException(nameof(atLeast), "The share to be covered is between 0 and 1.");
        if (completions.IsNone) return new([], 0, 0, IsSmallest: true);
        var answers = completions.AnswersIn(catalogue, weights, need);
        var alike = new Dictionary<ulong, BestParts<OfferKey>>();
        var walk = new CoverageWalk(catalogue, answers, catalogue.LeftOut(leftOut), MostAlike, alike);
        catalogue.Walk(ref walk);
        var isChoice = alike.Values.Any(parts => parts.IsFull);
        var chosenKinds = Enumerable.Range(0, completions.All.Count)
            .SelectMany(index => alike.Keys.Where(bits => (bits >> index & 1) == 1).OrderByDescending(BitOperations.PopCount).ThenBy(bits => bits).Take(MostKinds)).ToHashSet();
        isChoice |= chosenKinds.Count < alike.Count;
        List<(ulong Fitting, OfferKey Offer)> offered = [.. chosenKinds.SelectMany(bits => alike[bits].All).Select(one => (answers.FittingAt(one.Place), one.Key)).OrderBy(one => one.Key, OfferKey.BestFirst)];
        List<int> counts = [.. completions.All.Select(completion => completion.Weight)];
        var (chosen, isSmallest) = Cover.Smallest([.. offered.Select(one => one.Fitting)], counts, (int)Math.Ceiling((atLeast * completions.Weight) - 1e-9));
        var parts = chosen.Select(index => Carried(offered[index].Offer.Number, Indexes(offered[index].Fitting))).OrderByDescending(part => part.Share);
        var covered = chosen.Aggregate(0UL, (bits, index) => bits | offered[index].Fitting);
        var reached = Indexes(covered).Sum(index => counts[index]) / (double)completions.Weight;

        // Of parts that were not looked at some may reach further, but none takes less than one part does.
        var isOneEnough = chosen.Count == 1 && reached >= atLeast - 1e-9;
        return new([.. parts], completions.Machines, reached, isOneEnough || (isSmallest && !isChoice));

        IEnumerable<int> Indexes(ulong bits) => Enumerable.Range(0, counts.Count).Where(index => (bits >> index & 1) == 1);

        CarriedPart Carried(string number, IEnumerable<int> indexes) =>
            new(number, catalogue.Book.StockOf(catalogue.Book.Find(number)!.Value), indexes.Sum(index => counts[index]) / (double)completions.Weight, [.. indexes.Select(index => completions.All[index].Need)]);
    }
}
