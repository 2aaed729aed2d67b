using PartsMatch.Fit.Judging.Drawings;

namespace PartsMatch.Fit.Judging;

/// <summary>A cause that the readings make likely.</summary>
/// <param name="Name">Its name at every edge, in camel case: dirtyCoil.</param>
/// <param name="Title">What it is, in a few words.</param>
/// <param name="Weight">How much of the evidence speaks for it: points of the table of causes, above 0.</param>
/// <param name="Evidence">What speaks for it, and what against, one sentence each.</param>
/// <param name="Check">What to look at to be sure.</param>
public sealed record LikelyCause(string Name, string Title, int Weight, IReadOnlyList<string> Evidence, string Check);

/// <summary>What readings at a new part say after the swap.</summary>
/// <param name="Readings">What each reading says, in the order in which they are taken.</param>
/// <param name="Causes">What is likely wrong, the likeliest first; empty when nothing is.</param>
/// <param name="Drawings">Measured figures against their limits; none of what was not measured.</param>
public sealed record AfterSwapReport(IReadOnlyList<ReadingCheck> Readings, IReadOnlyList<LikelyCause> Causes, IReadOnlyList<Drawing> Drawings);

/// <summary>How much one piece of evidence speaks for a cause, or, below 0, against it.</summary>
/// <typeparam name="TEvidence">The kinds of evidence.</typeparam>
/// <param name="Evidence">The evidence.</param>
/// <param name="Points">From −10 to 10 (practice).</param>
public readonly record struct EvidenceWeight<TEvidence>(TEvidence Evidence, int Points)
    where TEvidence : struct, Enum;

/// <summary>A row of a table of causes.</summary>
/// <typeparam name="TEvidence">The kinds of evidence.</typeparam>
/// <param name="Name">Its name at every edge.</param>
/// <param name="Title">What it is.</param>
/// <param name="Check">What to look at to be sure.</param>
/// <param name="Symptom">What must be found at all before the cause is named.</param>
/// <param name="Weights">What each piece of evidence adds; what is not listed says nothing of it.</param>
public sealed record Cause<TEvidence>(string Name, string Title, string Check, TEvidence Symptom, IReadOnlyList<EvidenceWeight<TEvidence>> Weights)
    where TEvidence : struct, Enum
{
    /// <summary>The causes whose symptom was found and for which more speaks than against them, by falling weight; those of one weight as the table has them.</summary>
    /// <param name="table">The causes.</param>
    /// <param name="found">What was found, each with the sentence that says so.</param>
    public static IReadOnlyList<LikelyCause> Rank(IReadOnlyList<Cause<TEvidence>> table, IReadOnlyDictionary<TEvidence, string> found) =>
    [
        .. table.Where(cause => found.ContainsKey(cause.Symptom))
            .Select(cause => (Cause: cause, Speaking: cause.Weights.Where(weight => found.ContainsKey(weight.Evidence)).ToList()))
            .Select(pair => new LikelyCause(pair.Cause.Name, pair.Cause.Title, pair.Speaking.Sum(weight => weight.Points), [.. pair.Speaking.Select(weight => found[weight.Evidence])], pair.Cause.Check))
            .Where(cause => cause.Weight > 0)
            .OrderByDescending(cause => cause.Weight),
    ];
}
