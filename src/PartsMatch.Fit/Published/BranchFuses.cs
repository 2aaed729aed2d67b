using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Published;

/// <summary>Kinds of motor that NFPA 70 table 430.52 tells apart.</summary>
public enum BranchMotor
{
    /// <summary>Single-phase.</summary>
    SinglePhase,

    /// <summary>Alternating current, polyphase, other than wound-rotor.</summary>
    PolyphaseNotWoundRotor,

    /// <summary>Squirrel cage, other than Design B energy-efficient.</summary>
    SquirrelCage,

    /// <summary>Design B energy-efficient.</summary>
    DesignBEnergyEfficient,

    /// <summary>Synchronous.</summary>
    Synchronous,

    /// <summary>Wound rotor.</summary>
    WoundRotor,

    /// <summary>Direct current at constant voltage.</summary>
    DirectCurrent,
}

/// <summary>What protects a motor's branch circuit from short circuits and earth faults.</summary>
public enum BranchDevice
{
    /// <summary>Fuse without time delay.</summary>
    NonTimeDelayFuse,

    /// <summary>Dual-element fuse with time delay.</summary>
    TimeDelayFuse,

    /// <summary>Breaker that trips at once; adjustable, so it has no standard sizes.</summary>
    InstantaneousTripBreaker,

    /// <summary>Ordinary breaker.</summary>
    InverseTimeBreaker,
}

/// <summary>The largest fuse or breaker of a motor's branch circuit: NFPA 70 table 430.52, of the table's full-load current (430.6), not the plate's.</summary>
public static class BranchFuses
{
    private static readonly double[] StandardAmps = [15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500, 600];

    private static readonly double[] FuseAmps = [1, 3, 6, 10, .. StandardAmps];

    private static readonly Dictionary<BranchMotor, PublishedRow> Rows = PublishedTable.Read("nec-430-52").ToDictionary(row => Enum.Parse<BranchMotor>(row.Text("motor")));

    private static readonly Dictionary<(BranchMotor, BranchDevice), double> Percents = (
        from row in Rows
        from device in Enum.GetValues<BranchDevice>()
        select (Cell: (row.Key, device), Percent: row.Value.Needed(Column(device)))).ToDictionary(one => one.Cell, one => one.Percent);

    /// <summary>Where the sizes come from.</summary>
    public static Source SizesSource { get; } = new("NFPA 70 240.6(A), standard sizes; 430.52(C)(1) exception 1, the next size up", SourceStatus.Memory);

    /// <summary>The table's source.</summary>
    public static Source SourceOf(BranchMotor motor) => Rows[motor].Source;

    /// <summary>The most it may be, in percent of the full-load current: 175 for a time-delay fuse of a single-phase motor.</summary>
    public static double Percent(BranchMotor motor, BranchDevice device) => Percents[(motor, device)];

    /// <summary>The most it may be, A, before it is rounded up to a standard size.</summary>
    /// <param name="fullLoadAmps">Full-load current of the code's table, A; above 0.</param>
    /// <param name="motor">Kind of motor.</param>
    /// <param name="device">Kind of fuse or breaker.</param>
    /// <exception cref="ArgumentOutOfRangeException">The current is not above 0.</exception>
    public static double MostAmps(double fullLoadAmps, BranchMotor motor, BranchDevice device)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(fullLoadAmps);
        return fullLoadAmps * Percent(motor, device) / 100;
    }

    /// <summary>Standard sizes up to 600 A, rising; fuses also below 15 A. None for an instantaneous-trip breaker, which is set instead.</summary>
    public static IReadOnlyList<double> StandardSizes(BranchDevice device) => Sizes(device);

    /// <summary>The largest standard size allowed, A: the limit itself where that is a standard size, else the next one up.</summary>
    /// <param name="fullLoadAmps">Full-load current of the code's table, A; above 0.</param>
    /// <param name="motor">Kind of motor.</param>
    /// <param name="device">Kind of fuse or breaker.</param>
    /// <returns>The size; null above 600 A and for an instantaneous-trip breaker.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is not above 0.</exception>
    public static double? StandardSize(double fullLoadAmps, BranchMotor motor, BranchDevice device)
    {
        var most = MostAmps(fullLoadAmps, motor, device);
        foreach (var size in Sizes(device))
        {
            if (Within.AtLeast(size, most)) return size;
        }

        return null;
    }

    private static double[] Sizes(BranchDevice device) => device switch
    {
        BranchDevice.InstantaneousTripBreaker => [],
        BranchDevice.InverseTimeBreaker => StandardAmps,
        _ => FuseAmps,
    };

    private static string Column(BranchDevice device) => device switch
    {
        BranchDevice.NonTimeDelayFuse => "nontime_delay_fuse_percent",
        BranchDevice.TimeDelayFuse => "time_delay_fuse_percent",
        BranchDevice.InstantaneousTripBreaker => "instantaneous_trip_breaker_percent",
        _ => "inverse_time_breaker_percent",
    };
}
