using System.ComponentModel.DataAnnotations;

namespace PartsMatch.Service.Exchange;

/// <summary>How much one import may hold. The defaults take 100,000 motors with every field filled.</summary>
public sealed class ExchangeLimits
{
    public const string Section = "Exchange";

    /// <summary>Of a file. It is held in memory while it is read.</summary>
    [Range(1, 1_000_000_000)]
    public int Bytes { get; set; } = 96 * 1024 * 1024;

    /// <summary>How many imports over HTTP are read at once; another is refused until one is done. The pages keep at most four files besides.</summary>
    [Range(1, 64)]
    public int AtOnce { get; set; } = 3;

    [Range(1, 10_000_000)]
    public int Rows { get; set; } = 200_000;

    /// <summary>Characters of a cell that says something new.</summary>
    [Range(1, 1_000_000)]
    public int Cell { get; set; } = 10_000;

    /// <summary>How many rows of each state are told one by one; the others are counted.</summary>
    [Range(1, 1_000_000)]
    public int RowsTold { get; set; } = 1_000;
}
