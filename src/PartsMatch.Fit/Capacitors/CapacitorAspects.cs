using PartsMatch.Fit.Capacitors.Aspects;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Capacitors;

/// <summary>The questions asked of a capacitor, in order.</summary>
public static class CapacitorAspects
{
    /// <summary>All of them; those that turn most parts away stand first, those with many facet values last.</summary>
    public static IReadOnlyList<Aspect> All { get; } =
    [
        new Capacitance(),
        new Sections(),
        new Volts(),
        new Duty(),
        new CapacitorFrequency(),
        new Protection(),
        new TemperatureRating(),
        new Strap(),
        new CanHeight(),
    ];
}
