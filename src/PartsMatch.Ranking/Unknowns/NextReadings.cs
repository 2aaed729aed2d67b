using PartsMatch.Fit.Judging;
using PartsMatch.Ranking.Engine;

namespace PartsMatch.Ranking.Unknowns;

/// <summary>Which reading to take next: the one that is expected to settle most for its effort.</summary>
/// <remarks>
/// Looked at are the best parts of the list. What a reading settles is how much less uncertain it leaves, on the mean over what it may show, (a) which of them is the best and (b) whether
/// each of them does, on the mean over the parts; both in bits (Shannon's entropy). What it may show is what the completions say, and only the aspects that read the field count: a few dozen
/// machines differ in nearly everything, and whatever is read would seem to tell one from all others. A field of the site, which no completion tells, or of a
/// plate of which nothing else is open, is taken to settle an even chance, one bit, for every part that cannot be told yet for want of it (practice).
/// Readings for want of which none of these parts can be told to fit stand first: the others only sharpen the order of what nobody can be sold.
/// </remarks>
public static class NextReadings
{
    /// <summary>So many of the best parts are looked at.</summary>
    public const int MostParts = 50;

    /// <summary>The readings worth taking: those that every part waits for, then the others, of each the most worth first.</summary>
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
            advice.AddRange(family.SpecShape.Fields.Index().Where(one => completions.Open.Contains(one.Index))
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

        bool EveryPartWaits(ReadingAdvice one) => waiting[new(one.Side, one.Field.Name)].Distinct(StringComparer.Ordinal).Count() == page.Parts.Count;
        return [.. advice.Select(one => one with { EveryPartWaits = EveryPartWaits(one) }).Where(one => one.Narrowing > 1e-9).OrderByDescending(one => one.EveryPartWaits).ThenByDescending(one => one.Worth).ThenBy(one => one.Field.Name, StringComparer.Ordinal).Take(first)];
    }

    private static IEnumerable<Missing> Waiting(FitSheet sheet) => sheet.Findings
        .Where(one => one.Aspect.IsDeciding && one.Finding.Verdict == Verdict.Unknown)
        .SelectMany(one => one.Finding.Missing).Where(missing => missing.Side != Side.Part);

    /// <summary>What reading a field would settle about a few parts.</summary>
    private sealed class Chances
    {
        private readonly IReadOnlyList<Aspect> aspects;
        private readonly Completions completions;
        private readonly List<IReadOnlyList<CompletedAnswer>> parts;
        private readonly List<long[]> asItIs;

        public Chances(Catalogue catalogue, Weights weights, Need need, Completions completions, IReadOnlyList<string> numbers)
        {
            (aspects, this.completions) = (catalogue.Family.Aspects, completions);
            var answers = completions.AnswersIn(catalogue, weights, need);
            List<int> places = [.. numbers.Select(number => catalogue.Book.StateOf(catalogue.Book.Find(number)!.Value).Place)];
            parts = [.. places.Select(answers.AnswersAt)];
            asItIs = [.. places.Select(place => aspects.Select((_, aspect) => AsItIs(answers.ByNeed, aspect, place)).ToArray())];
        }

        public ReadingAdvice Advice(Field field, Func<Completion, int> value)
        {
            List<int> reading = [.. aspects.Index().Where(one => one.Item.Fields.All.Contains(field.Name)).Select(one => one.Index)];
            List<ulong> passing = [.. parts.Select(answers => reading.Aggregate(completions.Everything, (bits, aspect) => bits & answers[aspect].Passing(completions.Everything)))];
            List<int> best = [.. Enumerable.Range(0, completions.All.Count).Select(completion => Best(completion, reading, passing))];
            var everything = Enumerable.Range(0, completions.All.Count).ToList();
            var values = completions.All.Index().GroupBy(one => value(one.Item), one => one.Index).Select(group => group.ToList()).ToList();
            var ofBest = Uncertain(best, everything) - values.Sum(group => Share(group) * Uncertain(best, group));
            var ofFit = passing.Average(bits => Bits(Passes(bits, everything)) - values.Sum(group => Share(group) * Bits(Passes(bits, group))));
            var decides = passing.Count(bits => values.Exists(group => Math.Abs(Passes(bits, group) - Passes(bits, everything)) > 1e-9));
            return new(Side.Plate, field, ofBest + ofFit, decides, IsEstimated: true);
        }

        /// <summary>The best part for a completion, as far as the aspects that read the field tell, the others taken for the need as it is; −1 when they turn all away. Of equal ones the first in the list is the better offer.</summary>
        private int Best(int completion, List<int> reading, List<ulong> passing) => parts.Index()
            .Where(one => (passing[one.Index] >> completion & 1) == 1)
            .OrderByDescending(one => asItIs[one.Index].Sum() + reading.Sum(aspect => one.Item[aspect].ContributionOf(completion) - asItIs[one.Index][aspect]))
            .Select(one => one.Index).DefaultIfEmpty(-1).First();

        private static long AsItIs(Answers answers, int aspect, int place)
        {
            var (question, code) = answers.AskedOf(aspect, place);
            return answers.At(question, code).Contribution.Millionths;
        }

        private int WeightOf(List<int> group) => group.Sum(completion => completions.All[completion].Weight);

        private double Share(List<int> group) => WeightOf(group) / (double)completions.Weight;

        private double Passes(ulong bits, List<int> group) => WeightOf([.. group.Where(completion => (bits >> completion & 1) == 1)]) / (double)WeightOf(group);

        /// <summary>How uncertain it is which part is the best, in bits.</summary>
        private double Uncertain(List<int> best, List<int> group) =>
            group.GroupBy(completion => best[completion]).Select(same => WeightOf([.. same]) / (double)WeightOf(group)).Sum(share => -share * Math.Log2(share));

        private static double Bits(double share) => share is <= 0 or >= 1 ? 0 : (-share * Math.Log2(share)) - ((1 - share) * Math.Log2(1 - share));
    }
}
