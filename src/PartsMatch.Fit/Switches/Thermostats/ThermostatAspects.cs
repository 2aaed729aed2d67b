using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>The questions asked of a thermostat, in order.</summary>
public static class ThermostatAspects
{
    /// <summary>All of them; those that turn most parts away stand first.</summary>
    public static IReadOnlyList<Aspect> All { get; } =
    [
        new Function(),
        new ContactsDo(),
        new ResetRule(),
        new PolesOfThermostat(),
        new HazardousPlace(),
        new PilotLoad(),
        new DirectCurrent(),
        new SwitchingPoint(),
        new FanPoints(),
        new FullLoad(),
        new LockedRotor(),
        new Resistive(),
        new ReturnPoint(),
        new DifferentialSpan(),
        new PeakAtBulb(),
        new FormOfBulb(),
        new LengthOfBulb(),
        new CapillaryLength(),
        new CommonOfContacts(),
        new TerminalsOfThermostat(),
    ];
}
