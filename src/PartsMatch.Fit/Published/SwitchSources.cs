using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Published;

/// <summary>Where the rules for contacts, coils and controls come from.</summary>
public static class SwitchSources
{
    /// <summary>A pole for each line.</summary>
    public static Source Poles { get; } = new("As many poles as lines are switched; a pole too many stays unused; a shunt stays closed and may feed the crankcase heat", SourceStatus.Practice);

    /// <summary>Closes, opens, or changes over.</summary>
    public static Source ContactAction { get; } = new("Contacts that close for contacts that close; one side of a change-over contact does the same", SourceStatus.Practice);

    /// <summary>A contactor's main poles close.</summary>
    public static Source MainPolesClose { get; } = new("A contactor's poles are open until its coil pulls in, unless it says otherwise", SourceStatus.Practice);

    /// <summary>85 to 110 %.</summary>
    public static Source Coil { get; } = new("IEC 60947-4-1, NEMA ICS 2: a contactor's coil works from 85 to 110 % of its volts, at its frequency; within 5 % of it by practice", SourceStatus.Memory);

    /// <summary>Full-load amps.</summary>
    public static Source FullLoad { get; } = new("A contact carries the full-load amps it is marked for, all its motors added up, at the volts it is marked for or lower ones; a rating at 240 V says nothing at 480 V", SourceStatus.Practice);

    /// <summary>Locked-rotor amps.</summary>
    public static Source LockedRotor { get; } = new("Locked-rotor amps are a rating of their own, all motors added up; where only full-load amps are marked they are taken as 6 times those (UL/IEC 60730-1)", SourceStatus.Memory);

    /// <summary>Resistive amps.</summary>
    public static Source Resistive { get; } = new("Heaters need resistive amps (AC-1); those of motors never stand in for them, nor the other way round (IEC 60947-4-1 table 1)", SourceStatus.Published);

    /// <summary>Pilot duty.</summary>
    public static Source PilotDuty { get; } = new("Coils need pilot duty: NEMA ICS 5 table 1-4-1, IEC 60947-5-1 annex A (make 10 times the holding VA in classes A to C); below 120 V the amps of 120 V hold (from memory)", SourceStatus.Published);

    /// <summary>Categories are not crossed.</summary>
    public static Source Duty { get; } = new("IEC 60947-4-1 table 1: AC-1 for resistance, AC-3 for motors, AC-8a and AC-8b for hermetic compressors; contacts marked with locked-rotor amps are for such compressors, too (practice)", SourceStatus.Published);

    /// <summary>Motors need motor ratings.</summary>
    public static Source KindOfLoad { get; } = new("A motor needs full-load and locked-rotor amps or horsepower, a coil pilot duty, a heater resistive amps: IEC 60947, UL 60730", SourceStatus.Memory);

    /// <summary>Nothing that sparks.</summary>
    public static Source Hazard { get; } = new("ASHRAE 15 and IEC 60335-2-40, -2-89 (flammable refrigerants): open contacts are a source of ignition; sealed ones, or none, by their listing", SourceStatus.Memory);

    /// <summary>What the transformer has left.</summary>
    public static Source CoilVa { get; } = new("The VA of all coils on a transformer stay within its own", SourceStatus.Practice);

    /// <summary>Auxiliary contacts.</summary>
    public static Source Auxiliaries { get; } = new("Every auxiliary contact in use has one in its place", SourceStatus.Practice);

    /// <summary>Mechanical interlock.</summary>
    public static Source Interlock { get; } = new("Two contactors that must never both be in stay interlocked", SourceStatus.Practice);

    /// <summary>Horsepower by volts and phases.</summary>
    public static Source Horsepower { get; } = new("NEMA ICS 2 tables 2-4-1 and 2-4-2: horsepower by volts and phases; at lower volts than marked the amps count, not the horsepower", SourceStatus.Published);

    /// <summary>A horsepower rating in amps.</summary>
    public static Source HorsepowerInAmps { get; } = new("UL 60947-4-1: a horsepower rating stands for the full-load amps of NFPA 70 tables 430.248 and 430.250", SourceStatus.Memory);

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

    /// <summary>Amps of a heater.</summary>
    public static Source HeaterAmps { get; } = new("Amps of a heater = W / V, and on three phases W / (√3 · V)", SourceStatus.Derived);

    /// <summary>What is named is all.</summary>
    public static Source LoadsNamed { get; } = new("What is named is what is on the contact", SourceStatus.Practice);

    /// <summary>As the old one.</summary>
    public static Source AsTheOldOne { get; } = new("What the old one switched and was fed is there for the new one", SourceStatus.Practice);

    /// <summary>Ratings that do not go together.</summary>
    public static Source Ratings { get; } = new("Figures that stand side by side belong to the volts beside them", SourceStatus.Practice);
}
