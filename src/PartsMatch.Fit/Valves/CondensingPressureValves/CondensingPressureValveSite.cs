using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Valves.Pipes;
using UnitsNet;

namespace PartsMatch.Fit.Valves.CondensingPressureValves;

/// <summary>What a condensing-pressure valve will meet where it is put in. Null is unknown.</summary>
public sealed record CondensingPressureValveSite : Site
{
    private const string System = "System";
    private const string Pipes = "Pipes";

    /// <summary>The refrigerant in the system.</summary>
    [Field("Refrigerant", "On the unit's plate; never guessed from a neighbour.", Group = System)]
    public Refrigerant? Refrigerant { get; init; }

    /// <summary>The oil that goes round with it.</summary>
    [Field("Oil", "On the compressor's plate, or on a label where it was changed; it is not told by its looks, and a test kit tells mineral oil from polyolester.", Group = System)]
    public Oil? Oil { get; init; }

    /// <summary>Arrangement that is needed.</summary>
    [Field("Arrangement needed", "As the old one was, for the pipes are laid for it.", Group = System)]
    public Arrangement? NeedsArrangement { get; init; }

    /// <summary>Setting that is needed.</summary>
    [Field("Setting needed", "Gauge pressure that is to be held; where a differential check valve is needed, the difference between hot gas and receiver at which it opens, as marked on the old one, or by two gauges while its by-pass just gets hot. As the old one's if that was right.", Group = System, Example = "180 psi")]
    public Pressure? SettingNeeded { get; init; }

    /// <summary>Lowest head that the expansion valves bear.</summary>
    [Field("Least head", "Lowest gauge pressure before the expansion valves at which they still pass their load.", Group = System, Example = "150 psi")]
    public Pressure? LeastHead { get; init; }

    /// <summary>Load of the system.</summary>
    [Field("Load", "Greatest load while it is cold outside.", Group = System)]
    public CoolingLoad? Load { get; init; }

    /// <summary>Least ambient in which it runs.</summary>
    [Field("Least ambient", "Lowest outdoor temperature of the year in which it runs.", Group = System, Example = "0 °F")]
    public Temperature? LeastAmbient { get; init; }

    /// <summary>Pressure that may be lost across it.</summary>
    [Field("Drop allowed", "Pressure that may be lost across it at the load; where nothing is said, each valve is held at the drop of its own rating.", Group = System, Example = "2 psi")]
    public PressureDifference? DropAllowed { get; init; }

    /// <summary>Whether the receiver holds what floods the condenser.</summary>
    [Field("Receiver holds flooding", "Whether the receiver has room for the refrigerant that floods the condenser in the cold, when all of it drains in the heat.", Group = System)]
    public bool? ReceiverHoldsFlooding { get; init; }

    /// <summary>Design pressure of the high side.</summary>
    [Field("Design pressure", "On the unit's plate, for the high side.", Group = System, Example = "450 psi")]
    public Pressure? DesignPressure { get; init; }

    /// <summary>How the pipes there are made for joining.</summary>
    [Field("Pipe joints", "Solder, flare, pipe thread or butt weld; as at the old valve.", Group = Pipes)]
    public PipeJoint? LineJoint { get; init; }

    /// <summary>Size of the pipe from the condenser.</summary>
    [Field("Condenser pipe", "Outside diameter of the tube from the condenser to this valve; none at a differential check valve, beside which it goes onto the inlet regulator.", Group = Pipes, Tool = Tool.Calipers, Example = "5/8 in")]
    public Length? CondenserPipe { get; init; }

    /// <summary>Size of the pipe to the receiver.</summary>
    [Field("Receiver pipe", "Outside diameter of the tube to the receiver.", Group = Pipes, Tool = Tool.Calipers, Example = "5/8 in")]
    public Length? ReceiverPipe { get; init; }

    /// <summary>Size of the pipe for hot gas.</summary>
    [Field("Hot gas pipe", "Outside diameter of the tube from the discharge line to this valve; none at an inlet regulator, beside which it goes onto the differential check valve.", Group = Pipes, Tool = Tool.Calipers, Example = "5/8 in")]
    public Length? DischargePipe { get; init; }
}
