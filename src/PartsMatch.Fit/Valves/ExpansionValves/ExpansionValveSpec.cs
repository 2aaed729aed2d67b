using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Valves.Pipes;
using UnitsNet;

namespace PartsMatch.Fit.Valves.ExpansionValves;

/// <summary>What the bulb of a thermostatic expansion valve is filled with.</summary>
public enum BulbCharge
{
    /// <summary>Liquid of the system's own refrigerant.</summary>
    [Words("liquid charge", "LIQUID", "LIQUID CHARGED")]
    Liquid,

    /// <summary>So little of it that it limits the evaporating pressure.</summary>
    [Words("pressure-limited charge", "MOP CHARGE", "GAS CHARGE", "GAS CHARGED", "PRESSURE LIMITED")]
    PressureLimited,

    /// <summary>Liquid of another substance.</summary>
    [Words("cross charge", "CROSS", "CROSS CHARGED", "LIQUID CROSS")]
    Cross,

    /// <summary>A gas on a solid that takes it up.</summary>
    [Words("adsorption charge", "ADSORPTION", "ADSORBED")]
    Adsorption,
}

/// <summary>From where the pressure under a valve's diaphragm is taken.</summary>
public enum Equaliser
{
    /// <summary>From its own outlet.</summary>
    [Words("internal", "INT EQ", "INTERNAL EQUALIZER", "INT EQUALIZER", "INT. EQ.")]
    Internal,

    /// <summary>By a line of its own from behind the evaporator.</summary>
    [Words("external", "EXT EQ", "EXTERNAL EQUALIZER", "EXT EQUALIZER", "EXT. EQ.")]
    External,
}

/// <summary>What a thermostatic expansion valve is: a plate, or a catalogue entry. Null is unknown.</summary>
public sealed record ExpansionValveSpec : Spec
{
    private const string Valve = "Valve";
    private const string Rating = "Rating";
    private const string Connections = "Connections";
    private const string Bulb = "Bulb";

    /// <summary>The refrigerants it is made for.</summary>
    [Field("Refrigerants", "All that its plate or catalogue lists for its charge, with commas between.", Group = Valve)]
    public RefrigerantList? Refrigerants { get; init; }

    /// <summary>The oils it is listed for.</summary>
    [Field("Oils", "The oils that its plate or catalogue lists, with commas between.", Group = Valve)]
    public Choices<Oil>? Oils { get; init; }

    /// <summary>Where its diaphragm gets its pressure.</summary>
    [Field("Equaliser", "External: a third, small line goes to the suction pipe. Internal: there is none.", Group = Valve)]
    public Equaliser? Equaliser { get; init; }

    /// <summary>What lets pressures equalise while it is off.</summary>
    [Field("Equalises when off", "What lets the pressures come together while the compressor is off: a bleed port, or quickly a charge or passage made for it, or nothing.", Group = Valve)]
    public OffTimeWay? EqualisesOff { get; init; }

    /// <summary>Whether it may be flowed through both ways.</summary>
    [Field("Both ways", "Whether it may be flowed through both ways, as where a cycle reverses.", Group = Valve)]
    public bool? BothWays { get; init; }

    /// <summary>Highest working pressure of the body.</summary>
    [Field("Working pressure", "MWP or PS: the highest pressure that the body may hold.", Group = Valve, Example = "450 psi")]
    public Pressure? WorkingPressure { get; init; }

    /// <summary>Capacity at the conditions that stand with it.</summary>
    [Field("Rated capacity", "Capacity of the catalogue, at the conditions below it.", Group = Rating)]
    public CoolingLoad? RatedCapacity { get; init; }

    /// <summary>The refrigerant that it is rated with.</summary>
    [Field("Rated with", "The refrigerant that the capacity was given for.", Group = Rating)]
    public Refrigerant? RatedWith { get; init; }

    /// <summary>Evaporating temperature of the rating.</summary>
    [Field("Rated evaporating at", "Evaporating temperature that the capacity was given for, dew.", Group = Rating, Example = "20 °F")]
    public Temperature? RatedEvaporatingAt { get; init; }

    /// <summary>Liquid temperature of the rating.</summary>
    [Field("Rated liquid at", "Temperature of the liquid before it that the capacity was given for.", Group = Rating, Example = "100 °F")]
    public Temperature? RatedLiquidAt { get; init; }

    /// <summary>Pressure drop of the rating.</summary>
    [Field("Rated drop", "Pressure drop across it that the capacity was given for.", Group = Rating, Example = "100 psi")]
    public PressureDifference? RatedDrop { get; init; }

    /// <summary>Inlet joints.</summary>
    [Field("Joints", "Solder cups (ODF), flare (SAE), pipe thread or butt weld.", Group = Connections)]
    public PipeJoint? Joint { get; init; }

    /// <summary>Inlet tube size.</summary>
    [Field("Inlet size", "Outside diameter of the tube at the inlet.", Group = Connections, Tool = Tool.Calipers, Example = "3/8 in")]
    public Length? InletSize { get; init; }

    /// <summary>Outlet tube size.</summary>
    [Field("Outlet size", "Outside diameter of the tube at the outlet, mostly a size larger.", Group = Connections, Tool = Tool.Calipers, Example = "1/2 in")]
    public Length? OutletSize { get; init; }

    /// <summary>What its bulb is filled with.</summary>
    [Field("Charge", "What its bulb is filled with: liquid, pressure-limited (MOP), cross or adsorption charge.", Group = Bulb)]
    public BulbCharge? Charge { get; init; }

    /// <summary>Coldest evaporating temperature of the charge.</summary>
    [Field("Coldest evaporating", "Coldest evaporating temperature that its charge is for.", Group = Bulb, Example = "-40 °F")]
    public Temperature? EvaporatingLeast { get; init; }

    /// <summary>Warmest evaporating temperature of the charge.</summary>
    [Field("Warmest evaporating", "Warmest evaporating temperature that its charge is for.", Group = Bulb, Example = "50 °F")]
    public Temperature? EvaporatingMost { get; init; }

    /// <summary>Evaporating temperature that it holds the evaporator down to.</summary>
    [Field("Limits at", "Evaporating temperature of its pressure limit (MOP), where it has one.", Group = Bulb, Example = "35 °F")]
    public Temperature? LimitsAt { get; init; }

    /// <summary>Evaporating pressure that it holds the evaporator down to, above the air's: which temperature that is depends on the refrigerant.</summary>
    [Field("Limit pressure", "Evaporating pressure of its limit (MOP), by the gauge, where it is given as a pressure.", Group = Bulb, Example = "55 psi")]
    public Pressure? LimitPressure { get; init; }

    /// <summary>Length of its capillary.</summary>
    [Field("Capillary", "Length of the capillary to its bulb.", Group = Bulb, Tool = Tool.Tape, Example = "5 ft")]
    public Length? Capillary { get; init; }

    /// <summary>Diameter of its bulb.</summary>
    [Field("Bulb diameter", "Outside diameter of its bulb: one that sits in a well has to go in.", Group = Bulb, Tool = Tool.Calipers, Example = "1/2 in")]
    public Length? BulbDiameter { get; init; }

    /// <summary>Length of its bulb.</summary>
    [Field("Bulb length", "Length of its bulb, without the capillary.", Group = Bulb, Tool = Tool.Calipers, Example = "2-1/2 in")]
    public Length? BulbLength { get; init; }
}
