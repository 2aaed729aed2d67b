using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.DefrostTimers;

/// <summary>Where the rules for defrost timers come from.</summary>
public static class DefrostTimerSources
{
    /// <summary>Volts and frequency of the clock.</summary>
    public static Source Clock { get; } = new("A timer's clock runs from 90 to 110 % of its volts, and keeps time at its own frequency exactly, but for the 1 % that a grid may wander (EN 50160, from memory)", SourceStatus.Practice);

    /// <summary>Volts of the release.</summary>
    public static Source Release { get; } = new("A release solenoid is made for its circuit's volts, from 85 to 110 % of them, and for the frequency of the clock's mains; an old one that is not marked was fed the volts of a clock for one voltage", SourceStatus.Practice);

    /// <summary>What ends a defrost.</summary>
    public static Source EndedBy { get; } = new("A timer ends a defrost as the old one did; with nothing wired to its release the fail-safe ends it, by time; a pressure element ends it whatever is wired", SourceStatus.Practice);

    /// <summary>Contacts.</summary>
    public static Source ContactsFor { get; } = new("Heaters hang on a contact that closes in defrost, fans, or the compressor in timers of running time, on one that opens; fan delay and pump-down are there where they are used, which the old one's wires tell", SourceStatus.Practice);

    /// <summary>Poles.</summary>
    public static Source PolesOfTimer { get; } = new("As many poles as the old timer; one too many stays unused", SourceStatus.Practice);

    /// <summary>Starts.</summary>
    public static Source Starts { get; } = new("A programme starts as many defrosts a day as the coil needs", SourceStatus.Practice);

    /// <summary>Fail-safe.</summary>
    public static Source FailSafe { get; } = new("The fail-safe is at least as long as the longest defrost", SourceStatus.Practice);

    /// <summary>Heat and volts.</summary>
    public static Source HeatByVolts { get; } = new("P = V²/R: the heat of a heater goes with the square of its volts, and the minutes that it takes against it", SourceStatus.Derived);

    /// <summary>What a clock counts.</summary>
    public static Source ClockCounts { get; } = new("A clock for the hours of the day must never stop; one for running time stops with the compressor", SourceStatus.Practice);

    /// <summary>Terminals.</summary>
    public static Source TimerTerminals { get; } = new("Wires go from the old timer's terminals to the new one's by what they are there for, never by the number", SourceStatus.Practice);

    /// <summary>Box.</summary>
    public static Source BoxOfTimer { get; } = new("A mechanism fits a box of its own pattern alone; a timer in its own box goes anywhere", SourceStatus.Practice);
}
