using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.PressureControls.Aspects;

namespace PartsMatch.Fit.Switches.PressureControls;

/// <summary>The questions asked of a pressure control, in order.</summary>
public static class PressureControlAspects
{
    /// <summary>All of them; those that turn most parts away stand first.</summary>
    public static IReadOnlyList<Aspect> All { get; } =
    [
        new Function(),
        new ContactsDo(),
        new ResetRule(),
        new PolesOfControl(),
        new Materials(),
        new HazardousPlace(),
        new PilotLoad(),
        new DirectCurrent(),
        new Settings(),
        new DifferentialSpan(),
        new WorkingPressure(),
        new FullLoad(),
        new LockedRotor(),
        new Resistive(),
        new HighSetting(),
        new Connection(),
    ];
}
