using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.DefrostTimers.Aspects;

namespace PartsMatch.Fit.Switches.DefrostTimers;

/// <summary>The questions asked of a defrost timer, in order.</summary>
public static class DefrostTimerAspects
{
    /// <summary>All of them; those that turn most parts away stand first.</summary>
    public static IReadOnlyList<Aspect> All { get; } =
    [
        new ClockSupplied(),
        new EndsDefrost(),
        new ReleaseSupplied(),
        new ContactsThere(),
        new PolesOfTimer(),
        new StartsEnough(),
        new FailSafeLongEnough(),
        new HazardousPlace(),
        new PilotLoad(),
        new DirectCurrent(),
        new Resistive(),
        new FullLoad(),
        new LockedRotor(),
        new ClockCounts(),
        new FitsBox(),
        new TerminalsByFunction(),
    ];
}
