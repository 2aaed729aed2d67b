using System.Runtime.InteropServices;

namespace PartsMatch.Ranking.Engine;

/// <summary>Where a part stands. The default is a part that a snapshot does not know.</summary>
internal enum Standing : byte
{
    /// <summary>Not in the catalogue.</summary>
    Absent,

    /// <summary>Its number resolves, and it is never offered.</summary>
    Retired,

    /// <summary>Made no more: it can be had only where one is at hand.</summary>
    Discontinued,

    /// <summary>Made.</summary>
    Made,
}

/// <summary>What a snapshot knows of a part beside its facets.</summary>
/// <param name="Standing">Where it stands.</param>
/// <param name="Place">Its row; any other row of the same part is out of date. −1 when it has none, because it is not offered.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct PartState(Standing Standing, int Place)
{
    /// <summary>Whether the part is offered.</summary>
    public bool IsOffered => Standing >= Standing.Discontinued;
}

/// <summary>A part's stock in a column; the default is unknown.</summary>
/// <param name="OnHand">Pieces at the counter.</param>
/// <param name="Price">For one piece.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct StockCell(int? OnHand, decimal? Price);
