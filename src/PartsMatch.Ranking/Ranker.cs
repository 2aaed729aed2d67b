using PartsMatch.Fit.Judging;
using PartsMatch.Ranking.Engine;
using PartsMatch.Ranking.Unknowns;

namespace PartsMatch.Ranking;

/// <summary>Ranks a catalogue's parts for a need: gates first, then the score of what passes.</summary>
/// <remarks>
/// Pure and safe to call from many threads. Catalogue and weights must be of one family; anything else is a programmer's mistake and throws.
/// What it answers is what judging every part in full, dropping those that fail and sorting the rest would answer.
/// </remarks>
public static class Ranker
{
    private const int MostFailuresOfAMiss = 2;

    /// <summary>A page of the parts that pass every aspect.</summary>
    public static RankingPage Rank(Catalogue catalogue, Weights weights, RankingQuery query)
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

        var aspects = catalogue.Facets.Length;
        if (!query.Completions.IsNone)
        {
            var completed = query.Completions.AnswersIn(catalogue, weights, query.Need);
            using var kept = new KeptSums(query.Completions.All.Count);
            return Walked(new CompletedPrefix(completed, weights, aspects, kept), completed.ByNeed, completed.ExplainedAt);
        }

        using var answers = new Answers(catalogue, query.Need, weights);
        return Walked(new PlainPrefix(answers, weights, aspects), answers, place => Explained.Of(answers.SheetOf(place), weights, catalogue.NumberAt(place)));

        RankingPage.Listed Walked<TPrefix>(TPrefix prefix, Answers judged, Func<int, Explained> explain)
            where TPrefix : struct, IPrefix
        {
            // One more than asked for tells whether a page follows.
            var search = new LikeliestFirst<TPrefix>(catalogue, query, prefix, after, weights.HasPartTerms);
            var found = search.Find(query.First + 1);
            return new(
                [.. found.Take(query.First).Select(one => new RankedPart(
                    one.Key.Offer.Number, catalogue.StockAt(one.Place), judged.FitAt(one.Place), weights.Shown(one.Key.Percent, query.Completions.Machines), new(() => explain(one.Place)), new(() => Unread(one.Place)), new(() => one.Key.ToCursor(weights.Id))))],
                HasNextPage: found.Count > query.First,
                judged.Judged,
                search.Looked);
        }

        FitSheet Unread(int place) => new([.. catalogue.Family.Aspects.Select((aspect, index) => new AspectFinding(aspect, aspect.JudgeUnread(query.Need, catalogue.Facets[index][catalogue.CodeAt(place, index)])))]);
    }

    /// <summary>How many offered parts there are of every fit: a walk over all that does not fail, for when someone asks.</summary>
    /// <param name="catalogue">The parts.</param>
    /// <param name="need">The need.</param>
    /// <param name="leftOut">As in a <see cref="RankingQuery"/>.</param>
    public static IReadOnlyDictionary<PartFit, int> CountByFit(Catalogue catalogue, Need need, string? leftOut = null)
    {
        var counts = Enum.GetValues<PartFit>().ToDictionary(fit => fit, _ => 0);
        var left = catalogue.LeftOut(leftOut);
        using var answers = new Answers(catalogue, need, weights: null);
        var walk = new CountingWalk(catalogue, answers, left, counts);
        catalogue.Walk(ref walk);
        counts[PartFit.DoesntFit] = catalogue.Offered - counts.Values.Sum() - (left >= 0 ? 1 : 0);
        return counts;
    }

    /// <summary>The offered parts that come nearest when nothing fits: those with one failed aspect, then those with two; within each the best score of the rest, then at hand before to order before discontinued, then price, number.</summary>
    /// <param name="catalogue">The parts.</param>
    /// <param name="weights">What the aspects that do not fail cost.</param>
    /// <param name="need">The need.</param>
    /// <param name="first">How many at most, 0 or more.</param>
    /// <param name="leftOut">As in a <see cref="RankingQuery"/>.</param>
    public static IReadOnlyList<NearestMiss> NearestMisses(Catalogue catalogue, Weights weights, Need need, int first, string? leftOut = null)
    {
        Demand(catalogue.Family, weights);
        ArgumentOutOfRangeException.ThrowIfNegative(first);
        using var answers = new Answers(catalogue, need, weights);
        var left = catalogue.LeftOut(leftOut);
        List<NearestMiss> misses = [];
        for (var failures = 1; failures <= MostFailuresOfAMiss && misses.Count < first; failures++)
        {
            var best = new BestParts<MissKey>(first - misses.Count, MissKey.BestFirst);
            var walk = new MissesWalk(catalogue, answers, failures, left, best);
            catalogue.Walk(ref walk);
            misses.AddRange(best.All.Select(one => new NearestMiss(one.Key.Offer.Number, catalogue.StockAt(one.Place), Explained.Of(answers.SheetOf(one.Place), weights, catalogue.NumberAt(one.Place)))));
        }

        return misses;
    }

    /// <summary>Judges and scores one part, of the catalogue or not, with what can be deduced from its spec.</summary>
    public static Explained Explain(Family family, Weights weights, Need need, Spec spec, string? number = null) => Explain(family, weights, need, Completions.None, spec, number);

    /// <summary>Judges and scores one part, of the catalogue or not, for a need with unknowns.</summary>
    /// <param name="family">The family.</param>
    /// <param name="weights">The weights.</param>
    /// <param name="need">The need.</param>
    /// <param name="completions">What it may be.</param>
    /// <param name="spec">The part.</param>
    /// <param name="number">Its number, by which its record is found; null of one that has none.</param>
    public static Explained Explain(Family family, Weights weights, Need need, Completions completions, Spec spec, string? number = null)
    {
        Demand(family, weights);
        var sheet = family.Judge(need, spec);
        if (completions.IsNone) return Explained.Of(sheet, weights, number);
        var deduced = family.Deduce(spec).Spec;
        var answers = family.Aspects.Select((aspect, index) => new CompletedAnswer(completions, weights, aspect, index, aspect.FacetOf(deduced)));
        return Explained.Of(sheet, [.. answers], completions, weights, number);
    }

    private static void Demand(Family family, Weights weights)
    {
        if (family != weights.Family) throw new ArgumentException($"These weights are for {weights.Kind}, not for {family.Kind}.", nameof(weights));
    }
}
