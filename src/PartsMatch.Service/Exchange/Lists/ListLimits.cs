using System.ComponentModel.DataAnnotations;

namespace PartsMatch.Service.Exchange.Lists;

/// <summary>How much one list may hold that is cross-referenced over HTTP.</summary>
public sealed class ListLimits
{
    public const string Section = "CrossReference";

    [Range(1, 1_000_000)]
    public int Rows { get; set; } = 100_000;

    /// <summary>Of a list. It is held in memory while it is answered.</summary>
    [Range(1, 1_000_000_000)]
    public int Bytes { get; set; } = 32 * 1024 * 1024;

    /// <summary>How many lists are answered at once; another is refused until one is done.</summary>
    [Range(1, 64)]
    public int AtOnce { get; set; } = 2;
}
