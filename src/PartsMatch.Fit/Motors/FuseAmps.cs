using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Motors;

/// <summary>The current that sizes a motor's fuse: the code's table, or the plate's amps where those count (NFPA 70 430.6).</summary>
public static class FuseAmps
{
    /// <summary>Below this speed the marked current counts.</summary>
    private const double SlowRpm = 1200;

    /// <summary>Volts of motors, and the systems that the tables' columns stand for (notes to tables 430.248 and 430.250); 200 and 208 V stand for themselves.</summary>
    private static readonly (double Volts, double Least, double Most)[] Systems = [(115, 110, 120), (230, 220, 240), (460, 440, 480), (575, 550, 600)];

    /// <summary>Amps by tap; the table's only where it has all of the motor's ratings.</summary>
    public static (MotorAmps Amps, bool IsFromTable) Of(MotorSpec spec)
    {
        var marked = MotorAmps.FullLoad(spec);
        if (MarkedCounts(spec)) return (marked, false);
        var table = MotorAmps.Of(spec, row => FromTable(spec, row));
        return table.Rows.Count > 0 && table.Rows.Count >= marked.Rows.Count ? (table, true) : (marked, false);
    }

    /// <summary>Slow, several-speed, shaded-pole, split-capacitor and electronically commutated motors, and such as are not known not to be.</summary>
    private static bool MarkedCounts(MotorSpec spec) =>
        spec.Type is null or MotorType.ShadedPole or MotorType.PermanentSplitCapacitor or MotorType.ElectronicallyCommutated
        || spec.Speeds is not 1
        || spec.Speed is not { } speed
        || speed.Any(one => one.RevolutionsPerMinute < SlowRpm);

    private static Spread<ElectricCurrent>? FromTable(MotorSpec spec, Rating row)
    {
        if (spec is not { PowerMeaning: PowerMeaning.Output, Phase: { } phases } || row is not { Power: { } power, Volts: { } volts }) return null;
        return Find(phases, power, volts.First) is { } first && Find(phases, power, volts.Last) is { } last ? new(first, last) : null;
    }

    private static ElectricCurrent? Find(Phases phases, Power power, ElectricPotential volts) =>
        FullLoadCurrents.All.FirstOrDefault(cell => cell.Phases == phases && Within.Ratio((double)cell.Power.Watts, (double)power.Watts, 1 + HorsepowerSeries.SameRating) && IsSystem(cell.Volts.Volts, volts.Volts))?.Amps;

    private static bool IsSystem(double column, double volts) =>
        Array.Exists(Systems, system => system.Volts.Equals(column) && Within.Span(volts, system.Least, system.Most)) || Math.Abs(column - volts) < 0.5;
}
