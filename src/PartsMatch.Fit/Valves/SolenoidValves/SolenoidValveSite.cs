using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Valves.Pipes;
using UnitsNet;

namespace PartsMatch.Fit.Valves.SolenoidValves;

/// <summary>The line that a valve sits in.</summary>
public enum RefrigerantLine
{
    /// <summary>Liquid, before an expansion valve.</summary>
    [Words("liquid", "LIQUID LINE", "LL")]
    Liquid,

    /// <summary>Suction, behind an evaporator.</summary>
    [Words("suction", "SUCTION LINE")]
    Suction,

    /// <summary>Hot gas, behind a compressor.</summary>
    [Words("hot gas", "DISCHARGE", "DISCHARGE LINE")]
    HotGas,
}

/// <summary>What a solenoid valve will meet where it is put in. Null is unknown.</summary>
public sealed record SolenoidValveSite : Site
{
    private const string System = "Refrigerant and line";
    private const string Pressures = "Pressures";
    private const string Pipes = "Pipes";
    private const string Circuit = "Coil circuit";
    private const string Contact = "Contact that feeds the coil";

    /// <summary>The refrigerant in the system.</summary>
    [Field("Refrigerant", "On the unit's plate; never guessed from a neighbour.", Group = System)]
    public Refrigerant? Refrigerant { get; init; }

    /// <summary>The oil that goes round with it.</summary>
    [Field("Oil", "On the compressor's plate, or on a label where it was changed; it is not told by its looks, and a test kit tells mineral oil from polyolester.", Group = System)]
    public Oil? Oil { get; init; }

    /// <summary>What could burn round it.</summary>
    [Field("Hazard", "Flammable refrigerant in the same space, as the one there tells by itself, or a classified area; none where the refrigerant burns, but cannot reach its coil.", Group = System)]
    public Hazard? Hazard { get; init; }

    /// <summary>The line it sits in.</summary>
    [Field("Line", "Liquid, suction or hot gas.", Group = System)]
    public RefrigerantLine? Line { get; init; }

    /// <summary>How it has to stand without power.</summary>
    [Field("Needed without power", "Closed or open while its coil has no power; as the old one if that was right.", Group = System)]
    public NormalState? NeedsState { get; init; }

    /// <summary>Greatest load served.</summary>
    [Field("Load", "Greatest load of the evaporators that it serves.", Group = System)]
    public CoolingLoad? Load { get; init; }

    /// <summary>Least load served.</summary>
    [Field("Least load", "Least load while it is open: one of several fixtures calling, or an unloaded compressor.", Group = System, Example = "1 ton")]
    public CoolingLoad? LeastLoad { get; init; }

    /// <summary>Evaporating temperature, dew.</summary>
    [Field("Evaporating at", "Saturation temperature in the evaporator, dew.", Group = System, Tool = Tool.Meter, Example = "20 °F")]
    public Temperature? EvaporatingAt { get; init; }

    /// <summary>Condensing temperature, bubble.</summary>
    [Field("Condensing at", "Saturation temperature in the condenser, bubble; of a valve in a liquid line that of the pressure just before it, so that lift and losses up to there are counted.", Group = System, Tool = Tool.Meter, Example = "105 °F")]
    public Temperature? CondensingAt { get; init; }

    /// <summary>Temperature of what flows through the valve.</summary>
    [Field("Temperature at the valve", "Of the liquid before it, or of the gas: a clamp on the pipe.", Group = System, Tool = Tool.Meter, Example = "95 °F")]
    public Temperature? TemperatureThere { get; init; }

    /// <summary>Whether the flow reverses.</summary>
    [Field("Flow reverses", "Whether refrigerant flows through it both ways, as in a heat pump.", Group = System)]
    public bool? FlowReverses { get; init; }

    /// <summary>Highest pressure at the inlet.</summary>
    [Field("Highest inlet pressure", "The highest gauge pressure before it: on the hottest day, or where the high-pressure control opens.", Group = Pressures, Tool = Tool.Meter, Example = "250 psi")]
    public Pressure? InletMost { get; init; }

    /// <summary>Lowest pressure at the outlet.</summary>
    [Field("Lowest outlet pressure", "The lowest gauge pressure behind it when it has to open: after pump-down, for instance.", Group = Pressures, Tool = Tool.Meter, Example = "10 psi")]
    public Pressure? OutletLeast { get; init; }

    /// <summary>Design pressure of its side.</summary>
    [Field("Design pressure", "On the unit's plate, for the side that it sits on.", Group = Pressures, Example = "450 psi")]
    public Pressure? DesignPressure { get; init; }

    /// <summary>How the pipes there are made for joining.</summary>
    [Field("Pipe joints", "Solder, flare, pipe thread or butt weld; as at the old valve.", Group = Pipes)]
    public PipeJoint? LineJoint { get; init; }

    /// <summary>Size of the pipe at the inlet.</summary>
    [Field("Inlet pipe", "Outside diameter of the tube before it.", Group = Pipes, Tool = Tool.Calipers, Example = "3/8 in")]
    public Length? InletLine { get; init; }

    /// <summary>Size of the pipe at the outlet.</summary>
    [Field("Outlet pipe", "Outside diameter of the tube behind it.", Group = Pipes, Tool = Tool.Calipers, Example = "3/8 in")]
    public Length? OutletLine { get; init; }

    /// <summary>Volts that drive the coil.</summary>
    [Field("Volts at the coil", "Measured at the coil's leads with the circuit calling.", Group = Circuit, Tool = Tool.Meter, Example = "24 V")]
    public ElectricPotential? CoilSupplyVolts { get; init; }

    /// <summary>Frequency that drives the coil.</summary>
    [Field("Frequency at the coil", "60 Hz or 50 Hz.", Group = Circuit)]
    public Frequency? CoilSupplyFrequency { get; init; }

    /// <summary>What drives the coil.</summary>
    [Field("Current at the coil", "AC or DC.", Group = Circuit)]
    public CoilCurrent? CoilSupplyCurrent { get; init; }

    /// <summary>What the transformer still gives without the old coil.</summary>
    [Field("Transformer has left", "VA on its plate less what else hangs on it, the old coil not counted.", Group = Circuit, Example = "40 VA")]
    public ElectricApparentPower? TransformerLeft { get; init; }

    /// <summary>Pilot duty of the contact that feeds the coil.</summary>
    [Field("Contact's pilot duty", "On the thermostat, timer, control or relay whose contact feeds the coil: a letter and the greatest volts.", Group = Contact)]
    public PilotDuty? ContactDuty { get; init; }

    /// <summary>The same for direct current.</summary>
    [Field("Contact's DC pilot duty", "The same for a coil for direct current, beside the one for alternating current or by itself: a letter from N to R and the greatest volts.", Group = Contact)]
    public DirectPilotDuty? ContactDirectDuty { get; init; }

    /// <summary>VA of coils that it opens.</summary>
    [Field("Contact's VA", "VA of coils that the contact is marked for (pilot duty, sealed) at the volts and the kind of current there.", Group = Contact, Example = "125 VA")]
    public ElectricApparentPower? ContactVa { get; init; }

    /// <summary>VA of coils that it closes on.</summary>
    [Field("Contact's inrush VA", "VA that it is marked to close on; where nothing is said, six times the sealed VA is taken up to 72 VA, ten times above.", Group = Contact, Example = "1250 VA")]
    public ElectricApparentPower? ContactInrushVa { get; init; }

    /// <summary>Amps of coils that it opens.</summary>
    [Field("Contact's amps for coils", "Where it is marked in amps: those for coils (inductive, pilot duty) at the volts and the kind of current there, never those for heaters.", Group = Contact, Example = "1 A")]
    public ElectricCurrent? ContactAmps { get; init; }

    /// <summary>VA of the other coils on it.</summary>
    [Field("Other coils on the contact", "Holding VA of all else that the same contact feeds, the old coil not counted.", Group = Contact, Example = "10 VA")]
    public ElectricApparentPower? ContactOtherCoils { get; init; }
}
