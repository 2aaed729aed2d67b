using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Capacitors;

/// <summary>Where the rules for run capacitors come from.</summary>
public static class CapacitorSources
{
    /// <summary>The capacitor belongs to the motor.</summary>
    public static Source RunCapacitor { get; } = new("The run capacitor has the new motor's own µF and at least its volts", SourceStatus.Practice);

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

    /// <summary>What the old capacitor tells of its place.</summary>
    public static Source AsTheOldCapacitor { get; } = new("What the old capacitor served is there for the new one", SourceStatus.Practice);
}
