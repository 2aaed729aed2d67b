using PartsMatch.Ranking;

namespace PartsMatch.Learning;

/// <summary>
/// What single parts have come back more often than their specs explain. One step of Newton's method towards a part's own log-odds, held at 0 as if by sixteen outcomes that were half and half, of which each weighs a quarter:
/// Σ(y − p) / (Σp(1 − p) + 4), where y is 1 of one that came back and p how likely that was. Only what speaks against a part is kept, and no more of it than weights hold.
/// </summary>
public static class PartRecords
{
    private const double Held = 4;

    /// <summary>Records under this change no percent that anybody sees.</summary>
    private const double Least = 0.01;

    /// <summary>The records of all parts that have one, by number.</summary>
    /// <param name="examples">What happened.</param>
    /// <param name="costs">How likely it was.</param>
    public static IReadOnlyDictionary<string, double> Of(IReadOnlyCollection<Example> examples, Costs costs)
    {
        // What was not right the first time was reworked or came back: how often it came back is the same share of it for all parts.
        var share = (double)examples.Count(HasComeBack) / Math.Max(1, examples.Count(example => !example.Worked));
        return examples.GroupBy(example => example.PartNumber, StringComparer.Ordinal)
            .Select(part => (Number: part.Key, Record: RecordOf(part)))
            .Where(part => part.Record >= Least)
            .OrderBy(part => part.Number, StringComparer.Ordinal)
            .ToDictionary(part => part.Number, part => part.Record, StringComparer.Ordinal);

        double RecordOf(IEnumerable<Example> part)
        {
            var (more, weight) = (0.0, Held);
            foreach (var example in part)
            {
                var chance = share * (1 - (1 / (1 + Math.Exp(-example.LogOdds(costs)))));
                more += (HasComeBack(example) ? 1 : 0) - chance;
                weight += chance * (1 - chance);
            }

            return Math.Min(more / weight, Weights.MostWeight);
        }
    }

    private static bool HasComeBack(Example example) => example.Result == Result.CameBack;
}
