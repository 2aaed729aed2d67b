using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors;

/// <summary>Where the rules for turn, mount, shaft, enclosure and capacitors come from.</summary>
public static class BodySources
{
    /// <summary>The turn must be the one needed, and is named from an end.</summary>
    public static Source Rotation { get; } = new("The same turn has opposite names from the two ends (geometry); NEMA MG 1 part 2 and IEC 60034-8 name the end it is seen from", SourceStatus.Published);

    /// <summary>Frames fix feet and shaft height, faces have their bolt circle and pilot.</summary>
    public static Source Mount { get; } = new("NEMA MG 1 4.2, 4.4.1 and 4.4.4 (frames, feet and faces); bands, studs and adapters by practice", SourceStatus.Published);

    /// <summary>Shaft and hub within 0.04 mm, or a stocked bushing.</summary>
    public static Source ShaftDiameter { get; } = new("Shaft and hub agree within 0.04 mm (0.0015 in); a smaller shaft takes a bushing of a stocked size", SourceStatus.Practice);

    /// <summary>Shaft lengths change in steps of 1/4 in.</summary>
    public static Source ShaftLength { get; } = new("NEMA MG 1 4.4.1 note 3 changes shaft lengths in steps of 1/4 in; within one step the blade is set back to its depth (practice)", SourceStatus.Published);

    /// <summary>What a hub's screw or key sits on.</summary>
    public static Source ShaftForm { get; } = new("A set screw sits on a flat, a key in a keyway", SourceStatus.Practice);

    /// <summary>As many shaft ends as there are fans.</summary>
    public static Source ShaftEnds { get; } = new("A motor with two fans needs two shaft ends; an unused end is guarded", SourceStatus.Practice);

    /// <summary>Open machines are for dry places.</summary>
    public static Source Enclosure { get; } = new("NEMA MG 1 1.25 and 1.26 (open and enclosed machines), IEC 60034-5 table 3 (second digit 4: splashing water)", SourceStatus.Published);

    /// <summary>Types of motor that have no run capacitor.</summary>
    public static Source NoRunCapacitor { get; } = new("Shaded-pole, split-phase, capacitor-start, three-phase and electronically commutated motors have no run capacitor by their kind", SourceStatus.Derived);

    /// <summary>What the old motor had is what the place holds.</summary>
    public static Source AsTheOldMotor { get; } = new("What fitted the old motor is there for the new one", SourceStatus.Practice);
}
