using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking;

/// <summary>Ranks a catalogue's parts for a need: gates first, then the score of what passes.</summary>
/// <remarks>
/// A straightforward walk over every row. Pure and safe to call from many threads. Stock is keyed by part number, a part without a line has unknown stock.
/// Catalogue and weights must be of one family; anything else is a programmer's mistake and throws.
/// </remarks>
public static class Ranker
{
    private const int MostFailuresOfAMiss = 2;

    /// <summary>A page of the parts that pass every aspect.</summary>
    public static RankingPage Rank(Catalogue catalogue, Weights weights, IReadOnlyDictionary<string, Stock> stock, RankingQuery query)
    {
        Demand(catalogue.Family, weights);
        if (query.First < 0) throw new ArgumentOutOfRangeException(nameof(query), "The number of parts asked for is negative.");
        SortKey? after = null;
        if (query.After is not null)
        {
            if (SortKey.OfCursor(query.After) is not var (key, weightsId)) return new RankingPage.CursorMalformed();
            if (weightsId != weights.Id) return new RankingPage.CursorExpired();
            after = key;
        }

        var answers = new Answers(catalogue, query.Need, weights);
        var best = new PriorityQueue<int, SortKey>(SortKey.WorstFirst);
        var following = 0;
        foreach (var row in OfferedRows(catalogue, query.LeftOut))
        {
            var (_, score, fit) = answers.Walk(row, mostFailures: 0);
            if (fit == PartFit.DoesntFit || query.Include?.Contains(fit) == false) continue;
            var part = catalogue.PartAt(row);
            var line = stock.GetValueOrDefault(part.Number, Stock.Unknown);
            var key = new SortKey(weights.PercentOf(score), SortKey.SupplyOf(part, line), line.Price, part.Number);
            if (after is { } last && SortKey.BestFirst.Compare(key, last) <= 0) continue;
            following++;
            if (best.Count < query.First) best.Enqueue(row, key);
            else if (query.First > 0) best.EnqueueDequeue(row, key);
        }

        var parts = new RankedPart[best.Count];
        while (best.TryDequeue(out var row, out var key))
        {
            var part = catalogue.PartAt(row);
            var explained = Explained.Of(answers.SheetOf(row), weights);
            parts[best.Count] = new(part, stock.GetValueOrDefault(part.Number, Stock.Unknown), weights.LikelihoodOf(explained.Score), explained, key.ToCursor(weights.Id));
        }

        return new RankingPage.Listed(parts, following > parts.Length);
    }

    /// <summary>How many offered parts there are of every fit: a walk over all parts, for when someone asks.</summary>
    /// <param name="catalogue">The parts.</param>
    /// <param name="need">The need.</param>
    /// <param name="leftOut">As in a <see cref="RankingQuery"/>.</param>
    public static IReadOnlyDictionary<PartFit, int> CountByFit(Catalogue catalogue, Need need, string? leftOut = null)
    {
        var counts = Enum.GetValues<PartFit>().ToDictionary(fit => fit, _ => 0);
        var answers = new Answers(catalogue, need, weights: null);
        foreach (var row in OfferedRows(catalogue, leftOut)) counts[answers.Walk(row, mostFailures: 0).Fit]++;
        return counts;
    }

    /// <summary>The offered parts that come nearest when nothing fits: those with one failed aspect, then those with two; within each the best score of the rest, then at hand before to order before discontinued, then price, number.</summary>
    /// <param name="catalogue">The parts.</param>
    /// <param name="weights">What the aspects that do not fail cost.</param>
    /// <param name="stock">What is at hand.</param>
    /// <param name="need">The need.</param>
    /// <param name="first">How many at most, 0 or more.</param>
    /// <param name="leftOut">As in a <see cref="RankingQuery"/>.</param>
    public static IReadOnlyList<NearestMiss> NearestMisses(Catalogue catalogue, Weights weights, IReadOnlyDictionary<string, Stock> stock, Need need, int first, string? leftOut = null)
    {
        Demand(catalogue.Family, weights);
        ArgumentOutOfRangeException.ThrowIfNegative(first);
        var answers = new Answers(catalogue, need, weights);
        return [.. OfferedRows(catalogue, leftOut)
            .Select(row => (row, part: catalogue.PartAt(row), walk: answers.Walk(row, MostFailuresOfAMiss)))
            .Where(one => one.walk.Failures is > 0 and <= MostFailuresOfAMiss)
            .Select(one => (one.row, one.part, one.walk, stock: stock.GetValueOrDefault(one.part.Number, Stock.Unknown)))
            .OrderBy(one => one.walk.Failures)
            .ThenByDescending(one => one.walk.Score.Millionths)
            .ThenBy(one => SortKey.SupplyOf(one.part, one.stock))
            .ThenBy(one => one.stock.Price, Comparer<decimal?>.Create(SortKey.ComparePrices))
            .ThenBy(one => one.part.Number, StringComparer.Ordinal)
            .Take(first)
            .Select(one => new NearestMiss(one.part, one.stock, Explained.Of(answers.SheetOf(one.row), weights)))];
    }

    /// <summary>Judges and scores one part, of the catalogue or not, with what can be deduced from its spec.</summary>
    public static Explained Explain(Family family, Weights weights, Need need, Spec spec)
    {
        Demand(family, weights);
        return Explained.Of(family.Judge(need, spec), weights);
    }

    private static IEnumerable<int> OfferedRows(Catalogue catalogue, string? leftOut) =>
        Enumerable.Range(0, catalogue.Count).Where(row => catalogue.PartAt(row) is { IsOffered: true } part && part.Number != leftOut);

    private static void Demand(Family family, Weights weights)
    {
        if (family.Kind != weights.Kind) throw new ArgumentException($"These weights are for {weights.Kind}, not for {family.Kind}.", nameof(weights));
    }
}
