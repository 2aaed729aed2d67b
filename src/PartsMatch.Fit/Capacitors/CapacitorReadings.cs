using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Capacitors;

/// <summary>What is read at a run capacitor: the old one before it is condemned, the new one after the swap. Null was not read.</summary>
public sealed record CapacitorReadings : Readings
{
    private const string Section = "The capacitor, or its section for the first motor";
    private const string Second = "Section for the second motor";

    /// <summary>Whether it bulges or leaks.</summary>
    [Field("Bulges or leaks", "Whether its can bulges, leaks, or is burnt at a terminal.", Group = Section)]
    public bool? Bulges { get; init; }

    /// <summary>Microfarads by a meter.</summary>
    [Field("µF measured", "With a meter: power off, discharged through a resistor, wires off.", Group = Section)]
    public Measured<ElectricCapacitance>? Microfarads { get; init; }

    /// <summary>Volts across it under load.</summary>
    [Field("Volts across it", "With the motor running; above the line volts as a rule.", Group = Section, Example = "340 V")]
    public Measured<ElectricPotential>? AcrossVolts { get; init; }

    /// <summary>Amps in its lead under load.</summary>
    [Field("Amps in its lead", "With a clamp meter round its lead, the motor running.", Group = Section, Example = "1.1 A")]
    public Measured<ElectricCurrent>? LeadAmps { get; init; }

    /// <summary>Microfarads of the second section by a meter.</summary>
    [Field("Second section's µF measured", "With a meter: power off, discharged through a resistor, wires off.", Group = Second)]
    public Measured<ElectricCapacitance>? SecondMicrofarads { get; init; }

    /// <summary>Volts across the second section under load.</summary>
    [Field("Volts across the second section", "With its motor running.", Group = Second, Example = "340 V")]
    public Measured<ElectricPotential>? SecondAcrossVolts { get; init; }

    /// <summary>Amps in the second section's lead under load.</summary>
    [Field("Amps in the second section's lead", "With a clamp meter, its motor running.", Group = Second, Example = "1.1 A")]
    public Measured<ElectricCurrent>? SecondLeadAmps { get; init; }
}
