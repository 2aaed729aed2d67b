using PartsMatch.Fit.Judging;
using PartsMatch.Ranking.Engine;

namespace PartsMatch.Ranking.Unknowns;

/// <summary>Which reading to take next: the one that is expected to settle most for its effort.</summary>
/// <remarks>
/// Looked at are the best parts of the list. What a reading settles is how much less uncertain it leaves, on the mean over what it may show, (a) which of them is the best and (b) whether
/// each of them does, on the mean over the parts; both in bits (Shannon's entropy). What it may show is what the completions say. A field of the site, which no completion tells, or of a
/// plate of which nothing else is open, is taken to settle an even chance, one bit, for every part that cannot be told yet for want of it (practice).
/// </remarks>
public static class NextReadings
{
    /// <summary>So many of the best parts are looked at.</summary>
    public const int MostParts = 50;

    /// <summary>The readings worth taking, the most worth first.</summary>
    /// <param name="catalogue">The parts.</param>
    /// <param name="weights">What their shortcomings cost.</param>
    /// <param name="need">The need.</param>
    /// <param name="completions">What it may be.</param>
    /// <param name="first">How many at most, 0 or more.</param>
    /// <param name="leftOut">As in a <see cref="RankingQuery"/>.</param>
    public static IReadOnlyList<ReadingAdvice> Of(Catalogue catalogue, Weights weights, Need need, Completions completions, int first, string? leftOut = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(first);
        var query = new RankingQuery(need, null, MostParts, null, leftOut) { Completions = completions };
        if (Ranker.Rank(catalogue, weights, query) is not RankingPage.Listed { Parts.Count: > 0 } page) return [];
        var waiting = page.Parts.SelectMany(part => Waiting(part.Explained.Sheet).Select(missing => (missing, part.Number))).ToLookup(one => one.missing, one => one.Number);
        var family = catalogue.Family;
        List<ReadingAdvice> advice = [];
        if (!completions.IsNone)
        {
            var chances = new Chances(catalogue, weights, need, completions, [.. page.Parts.Select(part => part.Number)]);
            advice.AddRange(family.SpecShape.Fields.Index().Where(one => completions.All[0].Codes.ContainsKey(one.Index))
                .Select(one => chances.Advice(one.Item, completion => completion.Codes[one.Index])));
        }

        // What completions tell nothing of is told by the parts that wait for it.
        foreach (var missing in waiting.Select(group => group.Key))
        {
            var field = (missing.Side == Side.Plate ? family.SpecShape : family.SiteShape).Find(missing.Field);
            if (field is null || advice.Exists(one => one.Side == missing.Side && one.Field == field && one.Narrowing > 0)) continue;
            var parts = waiting[missing].Distinct(StringComparer.Ordinal).Count();
            advice.Add(new(missing.Side, field, parts / (double)page.Parts.Count, parts, IsEstimated: false));
        }

        return [.. advice.Where(one => one.Narrowing > 1e-9).OrderByDescending(one => one.Worth).ThenBy(one => one.Field.Name, StringComparer.Ordinal).Take(first)];
    }

    private static IEnumerable<Missing> Waiting(FitSheet sheet) => sheet.Findings
        .Where(one => one.Aspect.IsDeciding && one.Finding.Verdict == Verdict.Unknown)
        .SelectMany(one => one.Finding.Missing).Where(missing => missing.Side != Side.Part);

    /// <summary>For which completions each of a few parts does, and which is the best for each.</summary>
    private sealed class Chances
    {
        private readonly Completions completions;
        private readonly IReadOnlyList<ulong> passing;
        private readonly int[] best;

        public Chances(Catalogue catalogue, Weights weights, Need need, Completions completions, IReadOnlyList<string> parts)
        {
            this.completions = completions;
            var answers = new CompletedAnswers(catalogue, new(catalogue, need, weights), completions, weights);
            var judged = parts.Select(number => catalogue.StateOf(catalogue.Find(number)!.Value).Place).Select(answers.AnswersAt).ToList();
            passing = [.. judged.Select(all => all.Aggregate(ulong.MaxValue, (bits, answer) => bits & answer.Passing))];

            // Parts come in the list's order, so that of equally likely ones the first is the better offer.
            best = [.. completions.All.Select((_, completion) => judged.Index()
                .Where(one => (passing[one.Index] >> completion & 1) == 1)
                .Select(one => (one.Index, Percent: weights.PercentOf(new(one.Item.Sum(answer => answer.Contributions[completion])))))
                .OrderByDescending(one => one.Percent).Select(one => one.Index).DefaultIfEmpty(-1).First())];
        }

        public ReadingAdvice Advice(Field field, Func<Completion, int> value)
        {
            var values = completions.All.Index().GroupBy(one => value(one.Item), one => one.Index).Select(group => group.ToList()).ToList();
            var everything = Enumerable.Range(0, completions.All.Count).ToList();
            var ofBest = Uncertain(everything) - values.Sum(group => Share(group) * Uncertain(group));
            var ofFit = passing.Average(bits => Bits(Passes(bits, everything)) - values.Sum(group => Share(group) * Bits(Passes(bits, group))));
            var decides = passing.Count(bits => values.Select(group => Passes(bits, group)).Any(share => Math.Abs(share - Passes(bits, everything)) > 1e-9));
            return new(Side.Plate, field, ofBest + ofFit, decides, IsEstimated: true);
        }

        private int WeightOf(List<int> group) => group.Sum(completion => completions.All[completion].Weight);

        private double Share(List<int> group) => WeightOf(group) / (double)completions.Machines;

        private double Passes(ulong bits, List<int> group) => WeightOf([.. group.Where(completion => (bits >> completion & 1) == 1)]) / (double)WeightOf(group);

        /// <summary>How uncertain it is which part is the best, in bits.</summary>
        private double Uncertain(List<int> group) =>
            group.GroupBy(completion => best[completion]).Select(same => WeightOf([.. same]) / (double)WeightOf(group)).Sum(share => -share * Math.Log2(share));

        private static double Bits(double share) => share is <= 0 or >= 1 ? 0 : (-share * Math.Log2(share)) - ((1 - share) * Math.Log2(1 - share));
    }
}
