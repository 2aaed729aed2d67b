using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Valves.Pipes;
using UnitsNet;

namespace PartsMatch.Fit.Valves.CondensingPressureValves;

/// <summary>How a valve keeps the condensing pressure up when it is cold outside.</summary>
public enum Arrangement
{
    /// <summary>One valve with three ports and a gas-charged dome: it floods the condenser and lets hot gas by.</summary>
    [Words("three-way", "3-WAY", "THREE WAY", "3 WAY", "GAS CHARGED DOME")]
    ThreeWay,

    /// <summary>A regulator in the condenser's drain that floods it.</summary>
    [Words("inlet regulator", "INLET REGULATOR", "HOLDBACK", "INLET PRESSURE REGULATOR")]
    InletRegulator,

    /// <summary>A check valve that lets hot gas by at a difference of pressures.</summary>
    [Words("differential check", "DIFFERENTIAL CHECK", "DIFF CHECK", "DIFFERENTIAL VALVE")]
    DifferentialCheck,
}

/// <summary>What a condensing-pressure valve is: a plate, or a catalogue entry. Null is unknown.</summary>
public sealed record CondensingPressureValveSpec : Spec
{
    private const string Valve = "Valve";
    private const string Rating = "Rating";
    private const string Ports = "Ports";

    /// <summary>How it keeps the pressure up.</summary>
    [Field("Arrangement", "Three-way with a gas-charged dome, inlet regulator, or differential check valve.", Group = Valve)]
    public Arrangement? Arrangement { get; init; }

    /// <summary>The refrigerants it is listed for.</summary>
    [Field("Refrigerants", "All that its plate or catalogue lists, with commas between.", Group = Valve)]
    public RefrigerantList? Refrigerants { get; init; }

    /// <summary>The oils it is listed for.</summary>
    [Field("Oils", "The oils that its plate or catalogue lists, with commas between.", Group = Valve)]
    public Choices<Oil>? Oils { get; init; }

    /// <summary>The pressure that it holds.</summary>
    [Field("Setting", "Gauge pressure that it holds; of a differential check valve the difference that opens it.", Group = Valve, Example = "180 psi")]
    public Pressure? Setting { get; init; }

    /// <summary>Lowest setting.</summary>
    [Field("Set from", "Lowest setting of an adjustable one; of a fixed one its only setting.", Group = Valve, Example = "100 psi")]
    public Pressure? SettingLeast { get; init; }

    /// <summary>Highest setting.</summary>
    [Field("Set to", "Highest setting of an adjustable one; of a fixed one its only setting.", Group = Valve, Example = "225 psi")]
    public Pressure? SettingMost { get; init; }

    /// <summary>Whether its setting can be changed.</summary>
    [Field("Can be set", "Whether it has a stem or screw to set it by; a fixed one has none.", Group = Valve)]
    public bool? IsAdjustable { get; init; }

    /// <summary>Whether the two ends of its range are one pressure; null where neither is known.</summary>
    internal bool? HasOneSetting => (SettingLeast, SettingMost) is (null, null) ? null : Nullable.Equals(Rounded.Kilopascal(SettingLeast), Rounded.Kilopascal(SettingMost));

    /// <summary>Whether it can be set to more than one pressure, as it is marked, or else by its range; null where neither is known, for one that can be set is marked with what it came set to as well.</summary>
    internal bool? CanBeSet => IsAdjustable ?? !HasOneSetting;

    /// <summary>Highest working pressure of the body.</summary>
    [Field("Working pressure", "MWP or PS: the highest pressure that the body may hold.", Group = Valve, Example = "450 psi")]
    public Pressure? WorkingPressure { get; init; }

    /// <summary>Capacity at the conditions that stand with it.</summary>
    [Field("Rated capacity", "Capacity of the catalogue, at the drop and the least ambient that stand below it.", Group = Rating)]
    public CoolingLoad? RatedCapacity { get; init; }

    /// <summary>The refrigerant that it is rated with.</summary>
    [Field("Rated with", "The refrigerant that the capacity was given for.", Group = Rating)]
    public Refrigerant? RatedWith { get; init; }

    /// <summary>Pressure drop of the rating.</summary>
    [Field("Rated drop", "Pressure drop across it that the capacity was given for.", Group = Rating, Example = "2 psi")]
    public PressureDifference? RatedDrop { get; init; }

    /// <summary>Least ambient of the rating.</summary>
    [Field("Rated ambient", "The least outdoor temperature that the capacity was given for: the colder it is, the more the valve has to hold back and let by.", Group = Rating, Example = "0 °F")]
    public Temperature? RatedAmbient { get; init; }

    /// <summary>How it is joined to its pipes.</summary>
    [Field("Joints", "Solder cups (ODF), flare (SAE), pipe thread or butt weld.", Group = Ports)]
    public PipeJoint? Joint { get; init; }

    /// <summary>Port from the condenser.</summary>
    [Field("Condenser port", "Outside diameter of the tube from the condenser; a differential check valve has none.", Group = Ports, Tool = Tool.Calipers, Example = "5/8 in")]
    public Length? CondenserPort { get; init; }

    /// <summary>Port to the receiver.</summary>
    [Field("Receiver port", "Outside diameter of the tube to the receiver.", Group = Ports, Tool = Tool.Calipers, Example = "5/8 in")]
    public Length? ReceiverPort { get; init; }

    /// <summary>Port for hot gas.</summary>
    [Field("Hot gas port", "Outside diameter of the tube from the discharge line; an inlet regulator has none.", Group = Ports, Tool = Tool.Calipers, Example = "5/8 in")]
    public Length? DischargePort { get; init; }
}
