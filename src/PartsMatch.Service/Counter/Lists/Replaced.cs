using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;

namespace PartsMatch.Service.Counter.Lists;

/// <summary>What one old part of a list came to.</summary>
/// <param name="Old">Its entry, when the catalogue has its number.</param>
/// <param name="Parts">The best replacements, the best first.</param>
/// <param name="Remarks">What is to be said of them, or why there are none, a sentence each.</param>
/// <param name="Code">One of <see cref="Codes"/>, when nothing could be asked of it as it was given.</param>
public sealed record Replaced(CatalogueEntry? Old, IReadOnlyList<(CatalogueEntry Part, RankedPart Ranked)> Parts, IReadOnlyList<string> Remarks, string? Code)
{
    /// <summary>Why there is none, or what is not known yet; empty when there is nothing to say.</summary>
    public string Why => string.Join(' ', Remarks);

    public static Replaced Refused(CatalogueEntry? old, IReadOnlyList<Refusal> refusals) => new(old, [], [.. refusals.Select(refusal => refusal.Message)], refusals[0].Code);

    /// <summary>Of a row that names no old part: a blank one, or one that cannot be read.</summary>
    public static Replaced Without(string why) => new(Old: null, [], why.Length > 0 ? [why] : [], Code: null);

    /// <summary>What is to be changed on a part or looked at, in short words, in the family's order.</summary>
    public static IEnumerable<string> ToDo(FitSheet sheet) =>
    [
        .. sheet.Changes.Select(change => change.Text),
        .. sheet.Findings.Where(one => !one.Aspect.IsDeciding && one.Finding.Verdict == Verdict.Unknown).Select(one => $"check: {InSentence.Of(one.Aspect.Title)}"),
    ];
}
