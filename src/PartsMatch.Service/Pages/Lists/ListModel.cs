using PartsMatch.Service.Counter.Lists;
using PartsMatch.Service.Exchange.Lists;
using PartsMatch.Service.Pages.Fields;

namespace PartsMatch.Service.Pages.Lists;

/// <summary>A list of old parts that is to be sent, or was and is to be put right.</summary>
/// <param name="Limits">How much a list may hold.</param>
/// <param name="Complaints">What is wrong with the one that was sent.</param>
public sealed record ListModel(ListLimits Limits, Complaints Complaints)
{
    /// <summary>The lines that were pasted; where there are none, the header of the plainest list there is.</summary>
    public string Text { get => field.Length > 0 ? field : $"{ListColumns.Number}\n"; init; } = string.Empty;

    /// <summary>How many replacements each old part is given.</summary>
    public int First { get; init; } = 1;

    public static IEnumerable<int> Firsts => Enumerable.Range(1, CrossReference.MostParts);

    public double MostMegabytes => Limits.Bytes / (1024.0 * 1024.0);
}
