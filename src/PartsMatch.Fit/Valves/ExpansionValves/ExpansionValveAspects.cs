using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Valves.ExpansionValves.Aspects;

namespace PartsMatch.Fit.Valves.ExpansionValves;

/// <summary>The questions asked of an expansion valve, in order.</summary>
public static class ExpansionValveAspects
{
    /// <summary>All of them; those that turn most parts away stand first.</summary>
    public static IReadOnlyList<Aspect> All { get; } =
    [
        new SameRefrigerant(),
        new SameCharge(),
        new CapacityAtHeads(),
        new EqualiserLine(),
        new ExpansionBodyPressure(),
        new ChargeRange(),
        new OffTimeEqualising(),
        new ExpansionBothWays(),
        new ExpansionOil(),
        new CapillaryReach(),
        new BulbInPlace(),
        new ExpansionConnections(),
    ];
}
