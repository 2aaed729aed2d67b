namespace PartsMatch.Demo.Motors.Tables;

/// <summary>Run capacitors that motors of a size are wound for: practice, from memory, unchecked. Volts are the classes of the trade.</summary>
public static class RunCapacitors
{
    /// <summary>µF that motors of up to so many shaft watts take, at 208 to 277 V and at 115 V.</summary>
    private static readonly (double UpToWatts, double[] High, double[] Low)[] Rows =
    [
        (15, [1.5, 2], [3]), (50, [2, 3], [4, 5]), (80, [3, 3, 4], [5, 5, 7.5]), (100, [3, 4, 4, 5], [5, 7.5]), (130, [4, 5, 5], [7.5]), (200, [5, 5, 5, 5, 7.5, 4], [7.5, 10]),
        (280, [5, 7.5, 7.5], [10, 10, 15]), (400, [7.5, 10, 10], [15]), (600, [10, 15], [20, 25]), (900, [15, 20], [25, 30]),
        (1500, [20, 25, 30], [40]), (4000, [30, 40, 50], [60]),
    ];

    /// <summary>The choices, in µF.</summary>
    public static IReadOnlyList<double> Microfarads(double shaftWatts, double volts)
    {
        var row = Rows.First(row => shaftWatts <= row.UpToWatts);
        return volts < 150 ? row.Low : row.High;
    }
}
