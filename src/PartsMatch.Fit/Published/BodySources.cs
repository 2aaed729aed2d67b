using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Published;

/// <summary>Where the rules for turn, mount, shaft, enclosure and capacitors come from.</summary>
public static class BodySources
{
    /// <summary>The turn must be the one needed, and is named from an end.</summary>
    public static Source Rotation { get; } = new("The same turn has opposite names from the two ends (geometry); NEMA MG 1 part 2 and IEC 60034-8 name the end it is seen from", SourceStatus.Published);

    /// <summary>A shaded-pole motor's turn is fixed by its shading rings.</summary>
    public static Source ShadedPoleIsFixed { get; } = new("A shaded-pole motor cannot be reversed electrically", SourceStatus.Memory);

    /// <summary>A three-phase motor turns the other way with two lines changed over.</summary>
    public static Source ThreePhaseReverses { get; } = new("A three-phase motor is reversed by interchanging any two of its lines", SourceStatus.Memory);

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

    /// <summary>The capacitor belongs to the motor.</summary>
    public static Source RunCapacitor { get; } = new("The run capacitor has the new motor's own µF and at least its volts", SourceStatus.Practice);

    /// <summary>Types of motor that have no run capacitor.</summary>
    public static Source NoRunCapacitor { get; } = new("Shaded-pole, split-phase, capacitor-start, three-phase and electronically commutated motors have no run capacitor by their kind", SourceStatus.Derived);

    /// <summary>What the old motor had is what the place holds.</summary>
    public static Source AsTheOldMotor { get; } = new("What fitted the old motor is there for the new one", SourceStatus.Practice);

    /// <summary>µF within 6 %.</summary>
    public static Source Capacitance { get; } = new("Run capacitors keep within ±6 % (EIA-456-A practice, public articles)", SourceStatus.Published);

    /// <summary>Both sections of a two-section capacitor.</summary>
    public static Source CapacitorSections { get; } = new("Two single capacitors do the work of a two-section one", SourceStatus.Practice);

    /// <summary>Volts at least the motor plate's.</summary>
    public static Source CapacitorVolts { get; } = new("The volts follow the motor's plate, not the line: across a run capacitor they stand above the line's", SourceStatus.Practice);

    /// <summary>Run and start capacitors are different things.</summary>
    public static Source CapacitorDuty { get; } = new("IEC 60252-1 is for run capacitors, IEC 60252-2 for start capacitors", SourceStatus.Published);

    /// <summary>The current through a capacitor rises with frequency.</summary>
    public static Source CapacitorFrequency { get; } = new("I = 2πfCV: a capacitor carries more current at a higher frequency than it is marked for", SourceStatus.Derived);

    /// <summary>Capacitors that disconnect themselves.</summary>
    public static Source CapacitorProtection { get; } = new("A run capacitor is of a protected type that disconnects itself when it fails", SourceStatus.Practice);

    /// <summary>70 °C or more.</summary>
    public static Source CapacitorTemperature { get; } = new("A run capacitor is marked for 70 °C or more, and never for less than the air it sits in", SourceStatus.Practice);

    /// <summary>The can within strap and box.</summary>
    public static Source CapacitorCan { get; } = new("The can fits the strap there, or another strap is brought; its terminals need about 3/4 in over it", SourceStatus.Practice);

    /// <summary>Two sections or a protected type tell a run capacitor.</summary>
    public static Source RunCapacitorByLook { get; } = new("Two-section and protected capacitors are made as run capacitors", SourceStatus.Practice);
}
