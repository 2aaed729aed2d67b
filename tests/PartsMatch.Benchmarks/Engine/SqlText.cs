using PartsMatch.Ranking;
using static System.FormattableString;

namespace PartsMatch.Benchmarks.Engine;

/// <summary>What both databases are asked, as far as it is the same: list i has of aspect i the codes that pass, each with what it takes from the score in millionths.</summary>
internal static class SqlText
{
    /// <summary>An aspect's list.</summary>
    public static string List(int aspect) => Invariant($"list{aspect}");

    /// <summary>An aspect's column.</summary>
    public static string Column(int aspect) => Invariant($"aspect{aspect}");

    /// <summary>The columns beside those of the aspects.</summary>
    public static IReadOnlyList<string> Sorting { get; } = ["supply", "cents", "number"];

    /// <summary>The order of the answer: <see cref="Weights.LikelihoodOf"/> said in SQL, then what stands in columns.</summary>
    /// <param name="weights">Whose likelihood.</param>
    /// <param name="score">The sum of contributions, in millionths.</param>
    /// <param name="larger">The function that gives the larger of two.</param>
    /// <param name="smaller">The function that gives the smaller of two.</param>
    public static string BestFirst(Weights weights, string score, string larger, string smaller) => Invariant(
        $"ORDER BY {larger}(1, {smaller}(99, floor(100 / (1 + exp(-({weights.Intercept:R} + ({score}) / 1e6))) + 0.5))) DESC, supply, cents, number LIMIT {Contender.First}");
}
