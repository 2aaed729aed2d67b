using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.DefrostTimers;

/// <summary>Where the limits of readings come from of defrost timers.</summary>
public static class DefrostTimerReadingSources
{
    /// <summary>Volts at the clock.</summary>
    public static Source TimerClock { get; } = new("A timer's clock with volts within a tenth of its own turns; without volts, under a tenth of them, look up the circuit", SourceStatus.Practice);

    /// <summary>Contacts by hand.</summary>
    public static Source TimerContacts { get; } = new("Advanced by hand into defrost, a timer closes its heater contact and opens its fan contact, unless what ends a defrost on a warm coil throws it back; without volts before a contact, under a tenth of those there, look up the circuit, and under 85 % of them they may be stray ones", SourceStatus.Practice);

    /// <summary>Release.</summary>
    public static Source TimerRelease { get; } = new("With its volts, from 85 to 110 %, a release solenoid ends the defrost; without them, look up the switch on the coil", SourceStatus.Practice);

    /// <summary>Amps of heaters.</summary>
    public static Source DefrostHeaterAmps { get; } = new("Heaters take their watts over their volts, scaled to the volts there, within a tenth", SourceStatus.Practice);

    /// <summary>As it is set.</summary>
    public static Source TimerSet { get; } = new("The dial shows the time of day, and starts and fail-safe are set as the coil needs them", SourceStatus.Practice);

    /// <summary>A defrost seen through.</summary>
    public static Source DefrostSeenThrough { get; } = new("Fans stand still in defrost and start after their delay; where a switch on the coil ends the defrost, it does so before the fail-safe", SourceStatus.Practice);
}
