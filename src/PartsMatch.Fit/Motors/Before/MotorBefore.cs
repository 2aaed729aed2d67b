using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Motors.Drawings;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>Is it the motor? The rules, in the order in which they decide and ask.</summary>
public static class MotorBefore
{
    /// <summary>
    /// First what condemns a motor by itself, so that a blown fuse does not clear the winding that blew it; then what clears it (no volts, a bad supply);
    /// then the way down from volts without current to a motor that turns with too much.
    /// </summary>
    public static IReadOnlyList<ReadingRule<MotorCase>> Rules { get; } =
    [
        new ShaftByHand(), new InsulationToEarth(), new SinglePhaseWindings(), new ThreePhaseWindings(), new OhmsAgainstPlate(),
        new VoltsAtLeads(), new SupplyAtLeads(), new SupplyBalance(), new LegWithoutCurrent(),
        new HotWithoutCurrent(), new NoCurrent(), new CommandOfElectronics(), new CapacitorUnderLoad(), new StandsStill(), new AmpsOverPlate(), new SlowedByLoad(), new AmpsBalance(),
        new SplitOfCondenser(),
    ];

    /// <summary>A conclusion, or the reading to take next.</summary>
    public static Diagnosis Diagnose(MotorNeed need, MotorReadings readings)
    {
        var one = new MotorCase(need, readings);
        var split = SplitScale.Of(SplitOfCondenser.AsSwapped(one));
        return Diagnosis.Of(Rules, one, MotorMends.Of(one)) with { Drawings = [.. new[] { split }.OfType<Drawing>()] };
    }
}
