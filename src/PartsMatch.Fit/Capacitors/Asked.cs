using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Capacitors;

/// <summary>What the motors that a capacitor serves ask of it; null where not known.</summary>
/// <param name="First">µF for the motor, or for the larger of two.</param>
/// <param name="Second">µF for the second motor; null when only one is served.</param>
/// <param name="Volts">The volts that both of them need; null when one of them is not known.</param>
/// <param name="LeastVolts">The volts that are needed at least, as far as known.</param>
internal readonly record struct Asked(double? First, double? Second, double? Volts, double? LeastVolts)
{
    /// <summary>Reads a need: the motors' plates stand before the old capacitor, which may have been a wrong one.</summary>
    public static Asked Of(CapacitorNeed need)
    {
        var first = need.Site.MotorAsksFor ?? need.Plate.Rating;
        var second = need.Site.SecondMotorAsksFor;
        var secondSize = second is null ? first?.SecondSection : second.Capacitance;
        var firstVolts = Rounded.Volts(first?.Volts ?? need.Plate.Rating?.Volts);
        var secondVolts = Rounded.Volts(second?.Volts);
        var least = firstVolts is null ? secondVolts : Math.Max(firstVolts.Value, secondVolts ?? 0);
        var isWhole = firstVolts is not null && (second is null or { IsNone: true } || secondVolts is not null);
        return new(Rounded.Microfarads(first?.Capacitance), Rounded.Microfarads(secondSize), isWhole ? least : null, least);
    }
}
