using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Motors;

/// <summary>What is read at a motor: the old one before it is condemned, the new one after the swap. Null was not read.</summary>
public sealed record MotorReadings : Readings
{
    private const string Before = "Is it the part?";
    private const string Why = "Why it died";
    private const string After = "After the swap";
    private const string Condenser = "Condenser";
    private const string Evaporator = "Evaporator and box";

    /// <summary>Whether the circuit calls for the motor.</summary>
    [Field("Called for", "Whether the control calls for the fan now: thermostat calling, no delay running. Make it call before you measure.", Group = Before)]
    public bool? CircuitCalls { get; init; }

    /// <summary>Volts at the motor's leads, running or called for.</summary>
    [Field("Volts at the motor's leads", "With the circuit called for, at the leads themselves, not at the contactor; after the swap, with the motor running: one reading, or all three line to line as 460/467/450. 0 when there are none.", Group = Before)]
    public Measured<ElectricPotential>? LeadVolts { get; init; }

    /// <summary>What is open in the circuit.</summary>
    [Field("What is open", "What keeps the volts from the motor, if anything does: fan-cycling switch, delay, contactor, fuse, pressure control.", Group = Before)]
    public CircuitState? Control { get; init; }

    /// <summary>Whether it turns by itself.</summary>
    [Field("Turns", "Whether it turns by itself with volts on it.", Group = Before)]
    public bool? Turns { get; init; }

    /// <summary>Whether it hums without turning up.</summary>
    [Field("Hums", "Whether it hums or growls without turning up.", Group = Before)]
    public bool? Hums { get; init; }

    /// <summary>Amps in its lines.</summary>
    [Field("Amps", "With a clamp meter round one lead, or round each line as 2.1/2.2/2.1; after the swap, with the panels on. 0 when there are none.", Group = Before)]
    public Measured<ElectricCurrent>? MotorAmps { get; init; }

    /// <summary>Whether its shell is hot.</summary>
    [Field("Shell hot", "Whether the shell is too hot to keep a hand on. Power off first.", Group = Before)]
    public bool? ShellHot { get; init; }

    /// <summary>Whether it turns freely by hand.</summary>
    [Field("Spins freely", "Power off and locked out: whether blade or wheel turns freely by hand, without dragging or grinding.", Group = Before)]
    public bool? SpinsFreely { get; init; }

    /// <summary>Volts across its run capacitor, under load.</summary>
    [Field("Volts across the capacitor", "Across the run capacitor, running; above the line volts as a rule.", Group = Before, Example = "340 V")]
    public Measured<ElectricPotential>? CapacitorVolts { get; init; }

    /// <summary>Amps in the lead of its run capacitor, under load.</summary>
    [Field("Amps of the capacitor", "Clamp meter round one lead of the run capacitor, running.", Group = Before, Example = "1.1 A")]
    public Measured<ElectricCurrent>? CapacitorAmps { get; init; }

    /// <summary>Microfarads of its run capacitor by a meter.</summary>
    [Field("Capacitor's µF", "Run capacitor measured with a meter: power off, discharged through a resistor, one lead off.", Group = Before)]
    public Measured<ElectricCapacitance>? CapacitorMicrofarads { get; init; }

    /// <summary>Ohms common to run.</summary>
    [Field("Ohms common to run", "Between common and run lead (the two line leads of a shaded-pole motor); power off, leads apart, capacitor off. Open when the meter shows OL.", Group = Before)]
    public Ohms? OhmsCommonToRun { get; init; }

    /// <summary>Ohms common to start.</summary>
    [Field("Ohms common to start", "Between common and start lead; power off, leads apart, capacitor off. Open when the meter shows OL.", Group = Before)]
    public Ohms? OhmsCommonToStart { get; init; }

    /// <summary>Ohms run to start.</summary>
    [Field("Ohms run to start", "Between run and start lead; power off, leads apart, capacitor off. Open when the meter shows OL.", Group = Before)]
    public Ohms? OhmsRunToStart { get; init; }

    /// <summary>Ohms line 1 to 2.</summary>
    [Field("Ohms line 1 to 2", "Of a three-phase motor, between its leads for lines 1 and 2; power off, leads apart. Open when the meter shows OL.", Group = Before)]
    public Ohms? OhmsOneToTwo { get; init; }

    /// <summary>Ohms line 2 to 3.</summary>
    [Field("Ohms line 2 to 3", "Of a three-phase motor, between its leads for lines 2 and 3; power off, leads apart. Open when the meter shows OL.", Group = Before)]
    public Ohms? OhmsTwoToThree { get; init; }

    /// <summary>Ohms line 1 to 3.</summary>
    [Field("Ohms line 1 to 3", "Of a three-phase motor, between its leads for lines 1 and 3; power off, leads apart. Open when the meter shows OL.", Group = Before)]
    public Ohms? OhmsOneToThree { get; init; }

    /// <summary>Insulation resistance of the winding to the shell.</summary>
    [Field("Insulation to earth", "From the leads to the bare shell with an insulation tester; power off, leads apart. Never on an electronically commutated motor.", Group = Before, Example = "20 MΩ")]
    public Ohms? InsulationToEarth { get; init; }

    /// <summary>Whether an electronically commutated motor has its command.</summary>
    [Field("Speed signal there", "Of an electronically commutated motor: whether its speed signal or command is there while it is called for.", Group = Before)]
    public bool? SignalThere { get; init; }

    /// <summary>Blade out of balance.</summary>
    [Field("Blade out of balance", "Whether blade or wheel is bent, cracked, loaded with dirt, or shakes.", Group = Why)]
    public bool? BladeUnbalanced { get; init; }

    /// <summary>Coil dirty.</summary>
    [Field("Coil dirty", "Whether the coil it blows through is clogged; no when it was looked through and is clean.", Group = Why)]
    public bool? CoilDirty { get; init; }

    /// <summary>Contact burnt.</summary>
    [Field("Contact burnt", "Whether a pole of the contactor is burnt or pitted, or drops volts.", Group = Why)]
    public bool? ContactBurnt { get; init; }

    /// <summary>Short-cycles.</summary>
    [Field("Short-cycles", "Whether its control switches it on and off every few minutes.", Group = Why)]
    public bool? ShortCycles { get; init; }

    /// <summary>Drain holes wrong.</summary>
    [Field("Drain holes wrong", "Whether the lowest drain hole was plugged, or an upper one open.", Group = Why)]
    public bool? DrainsWrong { get; init; }

    /// <summary>Volts before it runs.</summary>
    [Field("Volts before it runs", "At the same leads or terminals with the motor not running, to see how far they drop under load.", Group = After)]
    public Measured<ElectricPotential>? StandingVolts { get; init; }

    /// <summary>Air goes the right way.</summary>
    [Field("Air goes the right way", "Whether the air goes the way it should.", Group = After)]
    public bool? AirRightWay { get; init; }

    /// <summary>Turns the right way.</summary>
    [Field("Turns the right way", "Whether shaft and blade turn the way they should, by the arrow or by the hand of the blade.", Group = After)]
    public bool? TurnsRightWay { get; init; }

    /// <summary>Blade clear.</summary>
    [Field("Blade clear", "Whether the blade clears its ring and guard all round, turned by hand.", Group = After)]
    public bool? BladeClear { get; init; }

    /// <summary>Running speed.</summary>
    [Field("Running speed", "Of the shaft, with a tachometer, panels on.", Group = After)]
    public RotationalSpeed? RunningSpeed { get; init; }

    /// <summary>Refrigerant.</summary>
    [Field("Refrigerant", "On the unit's plate.", Group = Condenser)]
    public Refrigerant? Refrigerant { get; init; }

    /// <summary>Condensing pressure.</summary>
    [Field("Condensing pressure", "Gauge pressure at the condenser or liquid line, after 15 minutes of steady running.", Group = Condenser)]
    public Pressure? CondensingPressure { get; init; }

    /// <summary>Entering air.</summary>
    [Field("Entering air", "Air entering the condenser, in the shade, at the coil.", Group = Condenser, Example = "95 °F")]
    public Temperature? EnteringAir { get; init; }

    /// <summary>Altitude of the site.</summary>
    [Field("Altitude of the site", "Above sea level: a gauge shows less than the standards assume where the air is thin.", Group = Condenser, Example = "5000 ft")]
    public Length? Altitude { get; init; }

    /// <summary>Design or earlier split.</summary>
    [Field("Design or earlier split", "Condensing temperature minus entering air, by the unit's papers or measured when it was in order.", Group = Condenser)]
    public TemperatureDelta? DesignSplit { get; init; }

    /// <summary>Head-pressure control set to.</summary>
    [Field("Head-pressure control set to", "Gauge pressure that a condensing-pressure valve or fan control holds; leave out when there is none.", Group = Condenser, Example = "180 psi")]
    public Pressure? HeadControlSetting { get; init; }

    /// <summary>Fans of the condenser.</summary>
    [Field("Fans of the condenser", "How many fans blow through the same coil.", Group = Condenser, Example = "2")]
    public int? FansOnCoil { get; init; }

    /// <summary>Fans running.</summary>
    [Field("Fans running", "How many of them run now.", Group = Condenser, Example = "2")]
    public int? FansRunning { get; init; }

    /// <summary>Air comes back.</summary>
    [Field("Air comes back", "Whether warm leaving air comes back to the coil: a wall, a hedge, a missing panel, a dead opening.", Group = Condenser)]
    public bool? AirRecirculates { get; init; }

    /// <summary>By-pass line warm.</summary>
    [Field("By-pass line warm", "Whether the by-pass line of a condensing-pressure valve is warm in warm weather.", Group = Condenser)]
    public bool? BypassWarm { get; init; }

    /// <summary>Liquid line.</summary>
    [Field("Liquid line", "Temperature of the liquid line where it leaves the condenser.", Group = Condenser, Example = "90 °F")]
    public Temperature? LiquidTemperature { get; init; }

    /// <summary>Pressure standing.</summary>
    [Field("Pressure standing", "Gauge pressure with the unit off until the coil has the temperature of the air round it.", Group = Condenser, Example = "120 psi")]
    public Pressure? StandingPressure { get; init; }

    /// <summary>Evaporator fans run.</summary>
    [Field("Evaporator fans run", "Whether the evaporator fans run; in a warm freezer they start late by design.", Group = Evaporator)]
    public bool? EvaporatorFansRun { get; init; }

    /// <summary>Box.</summary>
    [Field("Box", "Air in the box now.", Group = Evaporator, Example = "35 °F")]
    public Temperature? BoxTemperature { get; init; }

    /// <summary>Box set to.</summary>
    [Field("Box set to", "What the box is set to.", Group = Evaporator, Example = "35 °F")]
    public Temperature? BoxSetpoint { get; init; }

    /// <summary>Suction pressure.</summary>
    [Field("Suction pressure", "Gauge pressure at the suction line, running steadily.", Group = Evaporator, Example = "38 psi")]
    public Pressure? SuctionPressure { get; init; }

    /// <summary>Design evaporating.</summary>
    [Field("Design evaporating", "Evaporating temperature the unit is designed for.", Group = Evaporator, Example = "20 °F")]
    public Temperature? DesignEvaporating { get; init; }
}
