using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.Aspects;

namespace PartsMatch.Fit.Motors;

/// <summary>The questions asked of a motor, in order.</summary>
public static class MotorAspects
{
    /// <summary>All of them; those that turn most parts away stand first, those with many facet values last.</summary>
    public static IReadOnlyList<Aspect> All { get; } =
    [
        new Phase(),
        new SupplyVoltage(),
        new SupplyFrequency(),
        new VoltageAndFrequency(),
        new ShaftDiameter(),
        new Rotation(),
        new ShaftToHub(),
        new ShaftEnds(),
        new MotorEnclosure(),
        new HazardousPlace(),
        new ControlledSpeed(),
        new OverloadProtection(),
        new VoltageUnbalance(),
        new MotorCooling(),
        new BearingsAndPosition(),
        new Ambient(),
        new Insulation(),
        new AirDensity(),
        new Blade(),
        new Speed(),
        new OutputPower(),
        new RunCapacitor(),
        new ShaftLength(),
        new Mount(),
        new BodyLength(),
        new FanLoad(),
        new RunningCurrent(),
        new StartingCurrent(),
        new BranchFuse(),
    ];
}
