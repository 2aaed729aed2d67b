using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>Bushings that counters stock: each takes one shaft into one larger hub (practice; no standard).</summary>
internal static class ShaftBushings
{
    /// <summary>Shaft and hub agree when they differ by no more, mm: about 0.0015 in (practice).</summary>
    internal const double Tolerance = 0.04;

    /// <summary>Hub bore and shaft, mm. Walls thinner than 1/32 in or thicker than 1/8 in are not made.</summary>
    private static readonly (double Bore, double Shaft)[] Stocked =
    [
        Inch(5 / 16.0, 1 / 4.0), Inch(3 / 8.0, 1 / 4.0), Inch(3 / 8.0, 5 / 16.0), Inch(1 / 2.0, 1 / 4.0), Inch(1 / 2.0, 5 / 16.0), Inch(1 / 2.0, 3 / 8.0),
        Inch(5 / 8.0, 3 / 8.0), Inch(5 / 8.0, 1 / 2.0), Inch(3 / 4.0, 1 / 2.0), Inch(3 / 4.0, 5 / 8.0),
        (10, 8), (12, 8), (12, 10), (14, 10), (14, 12),
    ];

    /// <summary>Whether a bushing takes this shaft into this hub.</summary>
    public static bool Takes(double shaft, double bore) => Array.Exists(Stocked, one => Agree(one.Shaft, shaft) && Agree(one.Bore, bore));

    /// <summary>Whether two diameters are the same to the trade.</summary>
    public static bool Agree(double one, double other) => Within.AtMost(Math.Abs(one - other), Tolerance);

    private static (double Bore, double Shaft) Inch(double bore, double shaft) => (bore * 25.4, shaft * 25.4);
}
