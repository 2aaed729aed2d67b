using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Contactors;

/// <summary>Where the rules for contactors come from.</summary>
public static class ContactorSources
{
    /// <summary>A pole for each line.</summary>
    public static Source Poles { get; } = new("As many poles as lines are switched; a pole too many stays unused; a shunt stays closed and may feed the crankcase heat", SourceStatus.Practice);

    /// <summary>Closes, opens, or changes over.</summary>
    public static Source ContactAction { get; } = new("Contacts that close for contacts that close; one side of a change-over contact does the same; poles are mostly open until the coil pulls in, which is taken of an old one that does not say it", SourceStatus.Practice);

    /// <summary>85 to 110 %.</summary>
    public static Source Coil { get; } = new("IEC 60947-4-1, NEMA ICS 2: a contactor's coil works from 85 to 110 % of its volts, at its frequency; within 5 % of it by practice", SourceStatus.Memory);

    /// <summary>What drives a coil.</summary>
    public static Source CoilFrequency { get; } = new("What has a frequency is alternating current; a coil for one kind of current never takes the other", SourceStatus.Practice);

    /// <summary>Categories are not crossed.</summary>
    public static Source Duty { get; } = new("IEC 60947-4-1 table 1: AC-1 for resistance, AC-3 for motors, AC-8a and AC-8b for hermetic compressors; contacts marked with locked-rotor amps are for such compressors, too (practice)", SourceStatus.Published);

    /// <summary>Locked-rotor amps.</summary>
    public static Source LockedRotor { get; } = new("Locked-rotor amps are a rating of their own, all motors added up, compressors and others together within the lower rating of the two (practice); where none are marked a contactor bears 8 times its AC-3 amps, which it opens, and 6 times its AC-8 amps (IEC 60947-4-1 table 7) or the full-load amps of its horsepower (UL 60947-4-1); full-load amps alone tell none", SourceStatus.Memory);

    /// <summary>Auxiliary contacts.</summary>
    public static Source Auxiliaries { get; } = new("Every auxiliary contact in use has one in its place", SourceStatus.Practice);

    /// <summary>Mechanical interlock.</summary>
    public static Source Interlock { get; } = new("Two contactors that must never both be in stay interlocked; such pairs switch three lines", SourceStatus.Practice);

    /// <summary>Horsepower by volts and phases.</summary>
    public static Source Horsepower { get; } = new("NEMA ICS 2 tables 2-4-1 and 2-4-2: horsepower by volts and phases; at lower volts than marked the amps count, not the horsepower", SourceStatus.Published);

    /// <summary>Everything at once.</summary>
    public static Source Continuous { get; } = new("Motors and heaters on one pole together stay within the amps it carries all day", SourceStatus.Practice);

    /// <summary>How it is held.</summary>
    public static Source Mount { get; } = new("A contactor goes onto what holds the old one, or new holes are drilled", SourceStatus.Practice);

    /// <summary>What wires go onto.</summary>
    public static Source Terminals { get; } = new("Wires end in what the terminals take", SourceStatus.Practice);

    /// <summary>AC-1 is resistive.</summary>
    public static Source AcOne { get; } = new("IEC 60947-4-1 table 1: AC-1 is for resistance", SourceStatus.Published);

    /// <summary>AC-3 is motor duty.</summary>
    public static Source AcThree { get; } = new("IEC 60947-4-1 table 1: AC-3 is for squirrel-cage motors", SourceStatus.Published);
}
