using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Published;

/// <summary>The share of its rated power that a three-phase motor still gives on unbalanced volts: the points of NEMA MG 1 figure 14-1, straight lines between them.</summary>
/// <remarks>The points are read off a printed curve, and pages that do so differ by 0.01 above 2.5 % (0.89 or 0.90 at 3 %): no factor is surer than ±<see cref="Doubt"/>.</remarks>
public static class UnbalanceDerating
{
    /// <summary>How far a factor may be off, since the curve was read by eye.</summary>
    public const double Doubt = 0.01;

    /// <summary>The points, by rising unbalance.</summary>
    public static IReadOnlyList<UnbalanceDeratingPoint> All { get; } = [.. PublishedTable.Read("unbalance-derating")
        .Select(row => new UnbalanceDeratingPoint(row.Needed("unbalance_percent"), row.Needed("factor"), row.Source))];

    /// <summary>Power it may be loaded with, as a share of its rating: 1 up to 1 %, 0.76 at 5 %.</summary>
    /// <param name="percent">Unbalance of the volts in percent, as MG 1 reckons it; at least 0.</param>
    /// <returns>The factor, ±<see cref="Doubt"/>; null above 5 %, where MG 1 advises against running at all.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The percentage is negative or no number.</exception>
    public static double? Factor(double percent)
    {
        if (!(percent >= 0)) throw new ArgumentOutOfRangeException(nameof(percent), percent, "An unbalance is 0 or more.");
        var last = All[^1];
        if (!Within.AtMost(percent, last.Percent)) return null;
        var upper = All.FirstOrDefault(point => point.Percent >= percent) ?? last;
        var lower = All.Last(point => point.Percent <= percent);
        return upper == lower ? upper.Factor : lower.Factor + ((upper.Factor - lower.Factor) * (percent - lower.Percent) / (upper.Percent - lower.Percent));
    }
}
