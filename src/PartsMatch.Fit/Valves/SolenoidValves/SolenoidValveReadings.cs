using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Valves.SolenoidValves;

/// <summary>What is read at a solenoid valve: the old one before it is condemned, the new one after the swap. Null was not read.</summary>
public sealed record SolenoidValveReadings : Readings
{
    private const string Coil = "Coil";
    private const string Valve = "Valve";

    /// <summary>Whether its circuit calls for it.</summary>
    [Field("Circuit calls", "Whether the thermostat, timer or control that drives it is calling.", Group = Coil)]
    public bool? CircuitCalls { get; init; }

    /// <summary>Volts at the coil while called for.</summary>
    [Field("Volts at the coil", "At its leads, with the circuit calling; zero counts.", Group = Coil, Example = "24 V")]
    public Measured<ElectricPotential>? CoilVolts { get; init; }

    /// <summary>Volts across the contact that feeds the coil.</summary>
    [Field("Volts across its contact", "Across the contact of the thermostat, timer, control or relay that feeds the coil, closed, with the coil on it.", Group = Coil, Example = "0.1 V")]
    public Measured<ElectricPotential>? ContactDropVolts { get; init; }

    /// <summary>Ohms of the coil, power off and leads off.</summary>
    [Field("Ohms of the coil", "Power off, leads off; open counts.", Group = Coil)]
    public Ohms? CoilOhms { get; init; }

    /// <summary>Whether its magnet is felt.</summary>
    [Field("Magnet pulls", "Whether a steel screwdriver held near the coil's nut is pulled while it is energised. Never lift an energised coil off its stem: it burns.", Group = Coil)]
    public bool? MagnetPulls { get; init; }

    /// <summary>Pipe temperature before it.</summary>
    [Field("Pipe before it", "A clamp on the pipe before the valve.", Group = Valve, Example = "95 °F")]
    public Temperature? TemperatureBefore { get; init; }

    /// <summary>Pipe temperature behind it.</summary>
    [Field("Pipe behind it", "A clamp on the pipe behind the valve, while it is open and refrigerant flows.", Group = Valve, Example = "94 °F")]
    public Temperature? TemperatureBehind { get; init; }

    /// <summary>Whether refrigerant passes while it should be open.</summary>
    [Field("Passes when open", "Whether it passes with its coil as it opens it, and the compressor running. Hot gas: the pipe behind gets about as hot as before it within a few minutes. Suction: the pressure before it comes down to about the compressor's. Liquid: the suction pressure stays up, where else the low side pumps down.", Group = Valve)]
    public bool? PassesWhenOpen { get; init; }

    /// <summary>Whether refrigerant passes although it should be shut.</summary>
    [Field("Passes when shut", "Whether it passes refrigerant without power at its coil, or a normally open one with it: it hisses, frosts behind, or the low side will not pump down.", Group = Valve)]
    public bool? PassesWhenShut { get; init; }

    /// <summary>Whether a leak was found at it.</summary>
    [Field("Leaks outward", "Whether a detector or soap finds a leak at its stem, flange or joints.", Group = Valve)]
    public bool? LeaksOutward { get; init; }
}
