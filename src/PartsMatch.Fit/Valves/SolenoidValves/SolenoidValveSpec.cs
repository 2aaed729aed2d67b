using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Valves.Pipes;
using UnitsNet;

namespace PartsMatch.Fit.Valves.SolenoidValves;

/// <summary>How a solenoid valve stands while its coil has no power.</summary>
public enum NormalState
{
    /// <summary>Closed; it opens when energised.</summary>
    [Words("normally closed", "NC", "N.C.", "NORM CLOSED")]
    Closed,

    /// <summary>Open; it closes when energised.</summary>
    [Words("normally open", "NO", "N.O.", "NORM OPEN")]
    Open,
}

/// <summary>What lifts a solenoid valve's seat.</summary>
public enum Lift
{
    /// <summary>The magnet alone.</summary>
    [Words("direct-acting", "DIRECT", "DIRECT ACTING", "DIR ACTING")]
    Direct,

    /// <summary>The flow's own pressure drop, let in by a pilot port.</summary>
    [Words("pilot-operated", "PILOT", "PILOT OPERATED", "PILOT OP", "SERVO")]
    Pilot,
}

/// <summary>What a solenoid valve is: a plate, or a catalogue entry. Null is unknown.</summary>
public sealed record SolenoidValveSpec : Spec
{
    private const string Valve = "Valve";
    private const string Connections = "Connections";
    private const string Coil = "Coil";

    /// <summary>How it stands without power.</summary>
    [Field("Without power", "Normally closed opens when its coil is energised; normally open closes.", Group = Valve)]
    public NormalState? NormalState { get; init; }

    /// <summary>What lifts its seat.</summary>
    [Field("Lifted by", "Direct-acting: by the magnet alone. Pilot-operated: by the flow's pressure drop, so it needs a least one.", Group = Valve)]
    public Lift? Lift { get; init; }

    /// <summary>The refrigerants it is listed for.</summary>
    [Field("Refrigerants", "All that its plate or catalogue lists, with commas between.", Group = Valve)]
    public RefrigerantList? Refrigerants { get; init; }

    /// <summary>The oils it is listed for.</summary>
    [Field("Oils", "The oils that its plate or catalogue lists, with commas between.", Group = Valve)]
    public Choices<Oil>? Oils { get; init; }

    /// <summary>Flow coefficient.</summary>
    [Field("Flow coefficient", "Cv or Kv of the catalogue: flow of water at a drop of 1 psi or 1 bar.", Group = Valve)]
    public FlowCoefficient? FlowCoefficient { get; init; }

    /// <summary>Largest difference between inlet and outlet against which it opens.</summary>
    [Field("Largest opening differential", "MOPD: against this difference between inlet and outlet it still opens, with a hot coil at 85 % of its volts; that of the coil that comes on it.", Group = Valve)]
    public PressureDifference? OpeningDifferential { get; init; }

    /// <summary>The same with a coil for direct current.</summary>
    [Field("Opening differential with DC", "The same with a coil for direct current, where the catalogue gives it beside that for alternating current: DC lifts less.", Group = Valve, Example = "200 psi")]
    public PressureDifference? DirectDifferential { get; init; }

    /// <summary>Least drop that a pilot-operated one needs.</summary>
    [Field("Least operating differential", "Pressure drop that a pilot-operated valve needs to lift and stay open; 0 psi for a direct-acting one.", Group = Valve, Example = "2 psi")]
    public PressureDifference? LeastDifferential { get; init; }

    /// <summary>Highest working pressure of the body.</summary>
    [Field("Working pressure", "MWP or PS: the highest pressure that the body may hold.", Group = Valve, Example = "500 psi")]
    public Pressure? WorkingPressure { get; init; }

    /// <summary>Whether it holds and passes both ways.</summary>
    [Field("Both ways", "Whether it may be flowed through both ways, as where a cycle reverses.", Group = Valve)]
    public bool? BothWays { get; init; }

    /// <summary>Body material.</summary>
    [Field("Body", "Brass, steel or stainless steel.", Group = Valve)]
    public BodyMaterial? Body { get; init; }

    /// <summary>Marks for places where something could burn.</summary>
    [Field("Hazard marking", "Marks of valve and coil for flammable refrigerants or classified areas.", Group = Valve)]
    public Choices<HazardMarking>? Hazards { get; init; }

    /// <summary>How it is joined to its pipes.</summary>
    [Field("Joints", "Solder cups (ODF), flare (SAE), pipe thread or butt weld.", Group = Connections)]
    public PipeJoint? Joint { get; init; }

    /// <summary>Inlet tube size.</summary>
    [Field("Inlet size", "Outside diameter of the tube at the inlet.", Group = Connections, Tool = Tool.Calipers, Example = "3/8 in")]
    public Length? InletSize { get; init; }

    /// <summary>Outlet tube size.</summary>
    [Field("Outlet size", "Outside diameter of the tube at the outlet; most valves have the same on both sides.", Group = Connections, Tool = Tool.Calipers, Example = "3/8 in")]
    public Length? OutletSize { get; init; }

    /// <summary>Coil volts.</summary>
    [Field("Coil volts", "On the coil: 24 V, 120 V, 208-240 V.", Group = Coil, Example = "208-240 V")]
    public Taps? CoilVolts { get; init; }

    /// <summary>Coil current.</summary>
    [Field("Coil's current", "AC or DC.", Group = Coil)]
    public CoilCurrent? CoilCurrent { get; init; }

    /// <summary>Coil frequency.</summary>
    [Field("Coil frequency", "On the coil: 60 Hz, 50/60 Hz; none for direct current.", Group = Coil)]
    public Figures<Frequency>? CoilFrequency { get; init; }

    /// <summary>Coil's apparent power while held.</summary>
    [Field("Coil's VA", "Held, not at pull-in, as the transformer has to give it.", Group = Coil)]
    public ElectricApparentPower? CoilPower { get; init; }

    /// <summary>Coil's apparent power as it pulls in.</summary>
    [Field("Coil's inrush VA", "What it takes as it pulls in, as the contact that feeds it closes on; a coil for direct current takes no more than it holds by.", Group = Coil, Example = "35 VA")]
    public ElectricApparentPower? CoilInrush { get; init; }

    /// <summary>Part number of the coil on it.</summary>
    [Field("Coil's number", "Part number of the coil that comes on it.", Group = Coil, Example = "QC-24")]
    public string? CoilNumber { get; init; }

    /// <summary>Further coils that its body takes.</summary>
    [Field("Further coils", "Coils that go onto the same body, each with the VA that it takes, where they are given, and its part number.", Group = Coil)]
    public CoilOffers? FurtherCoils { get; init; }
}
