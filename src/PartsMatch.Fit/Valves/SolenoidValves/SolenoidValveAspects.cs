using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Valves.SolenoidValves.Aspects;

namespace PartsMatch.Fit.Valves.SolenoidValves;

/// <summary>The questions asked of a solenoid valve, in order.</summary>
public static class SolenoidValveAspects
{
    /// <summary>All of them; those that turn most parts away stand first.</summary>
    public static IReadOnlyList<Aspect> All { get; } =
    [
        new StateWithoutPower(),
        new RefrigerantListed(),
        new FlowCapacity(),
        new OpensAgainst(),
        new BodyPressure(),
        new CoilSupplied(),
        new FlowBothWays(),
        new CoilPower(),
        new CoilContact(),
        new HazardousPlace(),
        new OilListed(),
        new Connections(),
    ];
}
