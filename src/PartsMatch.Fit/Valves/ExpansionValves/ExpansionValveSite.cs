using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Valves.Pipes;
using UnitsNet;

namespace PartsMatch.Fit.Valves.ExpansionValves;

/// <summary>What an expansion valve will meet where it is put in. Null is unknown.</summary>
public sealed record ExpansionValveSite : Site
{
    private const string System = "System";
    private const string Heads = "Load and heads";
    private const string Evaporator = "Evaporator";
    private const string Pipes = "Pipes and bulb";

    /// <summary>The refrigerant in the system.</summary>
    [Field("Refrigerant", "On the unit's plate; never guessed from a neighbour.", Group = System)]
    public Refrigerant? Refrigerant { get; init; }

    /// <summary>The oil that goes round with it.</summary>
    [Field("Oil", "On the compressor's plate, or on a label where it was changed; it is not told by its looks, and a test kit tells mineral oil from polyolester.", Group = System)]
    public Oil? Oil { get; init; }

    /// <summary>Charge that is needed.</summary>
    [Field("Charge needed", "What the bulb has to be filled with; as in the old one if that was right.", Group = System)]
    public BulbCharge? NeedsCharge { get; init; }

    /// <summary>Whether the compressor starts against little pressure only.</summary>
    [Field("Starts only equalised", "Whether the compressor has a low starting torque: no start capacitor, so the pressures must have come together before it starts.", Group = System)]
    public bool? LowStartingTorque { get; init; }

    /// <summary>Whether the flow reverses.</summary>
    [Field("Flow reverses", "Whether refrigerant flows through it both ways, as in a heat pump.", Group = System)]
    public bool? FlowReverses { get; init; }

    /// <summary>Design pressure of the high side.</summary>
    [Field("Design pressure", "On the unit's plate, for the high side.", Group = System, Example = "450 psi")]
    public Pressure? DesignPressure { get; init; }

    /// <summary>Load of the evaporator.</summary>
    [Field("Load", "Load of the evaporator at its design.", Group = Heads)]
    public CoolingLoad? Load { get; init; }

    /// <summary>Evaporating temperature, dew.</summary>
    [Field("Evaporating at", "Saturation temperature in the evaporator at its design, dew.", Group = Heads, Tool = Tool.Meter, Example = "20 °F")]
    public Temperature? EvaporatingAt { get; init; }

    /// <summary>Lowest condensing temperature, bubble.</summary>
    [Field("Coldest condensing", "Lowest condensing temperature of the year, bubble: what the head-pressure control holds.", Group = Heads, Example = "80 °F")]
    public Temperature? CondensingLeast { get; init; }

    /// <summary>Highest condensing temperature, bubble.</summary>
    [Field("Warmest condensing", "Highest condensing temperature of the year, bubble: on the hottest day.", Group = Heads, Tool = Tool.Meter, Example = "115 °F")]
    public Temperature? CondensingMost { get; init; }

    /// <summary>Subcooling before the valve.</summary>
    [Field("Subcooling", "How much colder the liquid before it is than the condensing temperature.", Group = Heads, Tool = Tool.Meter, Example = "10 °F")]
    public TemperatureDelta? Subcooling { get; init; }

    /// <summary>Losses before the valve.</summary>
    [Field("Line losses", "Pressure lost in the liquid line, drier and lift before it; 0 psi where nearly none is.", Group = Heads, Example = "5 psi")]
    public PressureDifference? LineLoss { get; init; }

    /// <summary>Whether a distributor follows it.</summary>
    [Field("Distributor", "Whether a distributor with several tubes follows it.", Group = Evaporator)]
    public bool? HasDistributor { get; init; }

    /// <summary>Loss in the distributor.</summary>
    [Field("Distributor loss", "Pressure lost in distributor and tubes, mostly 25 to 35 psi; 0 psi without one.", Group = Evaporator, Example = "30 psi")]
    public PressureDifference? DistributorLoss { get; init; }

    /// <summary>Whether the suction pipe has a tap for an equaliser line.</summary>
    [Field("Equaliser tap", "Whether the suction pipe behind the bulb has a tap for an external equaliser.", Group = Evaporator)]
    public bool? HasEqualiserTap { get; init; }

    /// <summary>How the pipes there are made for joining.</summary>
    [Field("Pipe joints", "Solder, flare, pipe thread or butt weld; as at the old valve.", Group = Pipes)]
    public PipeJoint? LineJoint { get; init; }

    /// <summary>Size of the pipe at the inlet.</summary>
    [Field("Inlet pipe", "Outside diameter of the tube before it.", Group = Pipes, Tool = Tool.Calipers, Example = "3/8 in")]
    public Length? InletLine { get; init; }

    /// <summary>Size of the pipe at the outlet.</summary>
    [Field("Outlet pipe", "Outside diameter of the tube behind it.", Group = Pipes, Tool = Tool.Calipers, Example = "1/2 in")]
    public Length? OutletLine { get; init; }

    /// <summary>Capillary length that reaches the suction pipe.</summary>
    [Field("Capillary needed", "Length that reaches from the valve to the bulb's place.", Group = Pipes, Tool = Tool.Tape, Example = "3 ft")]
    public Length? CapillaryNeeded { get; init; }

    /// <summary>Where the bulb sits.</summary>
    [Field("Bulb's place", "Strapped on the suction pipe, as mostly, or in a well in it.", Group = Pipes)]
    public BulbPlace? BulbPlace { get; init; }

    /// <summary>Bore of the bulb's well.</summary>
    [Field("Well's bore", "Inside diameter of the well that the bulb sits in.", Group = Pipes, Tool = Tool.Calipers, Example = "1/2 in")]
    public Length? WellBore { get; init; }

    /// <summary>Room for the bulb.</summary>
    [Field("Room for the bulb", "Straight suction pipe that is free for it, or depth of its well.", Group = Pipes, Tool = Tool.Tape, Example = "4 in")]
    public Length? BulbRoom { get; init; }
}
