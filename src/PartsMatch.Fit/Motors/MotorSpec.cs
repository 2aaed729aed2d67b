using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Motors;

/// <summary>What a motor is: a plate, or a catalogue entry with all that it can be set to. Null is unknown.</summary>
/// <remarks>Power, speed, volts, amps and frequency run parallel, one figure a rating row; a single figure stands for every row.</remarks>
public sealed record MotorSpec : Spec
{
    private const string Rating = "Rating";
    private const string Supply = "Supply";
    private const string Mounting = "Mount and body";
    private const string ShaftGroup = "Shaft and turn";
    private const string Inside = "Winding and enclosure";
    private const string Control = "Protection and control";

    /// <summary>How it makes its torque.</summary>
    [Field("Type", "How the motor makes its torque: shaded pole, permanent split capacitor, three-phase ... A capacitor beside a fan motor of one phase mostly means permanent split capacitor.", Group = Rating)]
    public MotorType? Type { get; init; }

    /// <summary>Power, one figure a rating row.</summary>
    [Field("Power", "HP, kW or W on the plate; 3/4-1/3 HP stands for two speeds.", Group = Rating)]
    public Figures<Power>? Power { get; init; }

    /// <summary>Whether the power is at the shaft or from the line.</summary>
    [Field("Kind of power", "Horsepower is shaft output. Watts on small fan and IEC plates are often input: P1 or W IN is input, P2 or W OUT is output.", Group = Rating)]
    public PowerMeaning? PowerMeaning { get; init; }

    /// <summary>What it draws where the plate gives that beside its power, one figure a rating row.</summary>
    [Field("Input power", "W IN or P1 on a plate that gives the output besides: what the motor takes from the line.", Group = Rating, Example = "120 W")]
    public Figures<Power>? InputPower { get; init; }

    /// <summary>Full-load speed, one figure a rating row.</summary>
    [Field("Speed", "RPM on the plate, at full load; 1725/1140 stands for two speeds.", Group = Rating)]
    public Figures<RotationalSpeed>? Speed { get; init; }

    /// <summary>How many speeds it has.</summary>
    [Field("Speeds", "How many speeds the motor has (1, 2, 3 ...): count the speed leads if the plate does not say.", Group = Rating, Example = "2")]
    public int? Speeds { get; init; }

    /// <summary>How it has several speeds.</summary>
    [Field("Speeds come from", "A tapped winding has the same poles on every speed; separate windings have their own poles each.", Group = Rating)]
    public SpeedMeans? SpeedMeans { get; init; }

    /// <summary>Poles at high speed.</summary>
    [Field("Poles", "Poles at the highest speed: 2, 4, 6, 8 ... Plates rarely say; speed and frequency tell.", Group = Rating)]
    public int? Poles { get; init; }

    /// <summary>Service factor.</summary>
    [Field("Service factor", "SF on the plate, such as 1.15: how far over its power it may be loaded at rated volts.", Group = Rating)]
    public double? ServiceFactor { get; init; }

    /// <summary>How long it may carry its rating.</summary>
    [Field("Duty", "CONT or S1 for continuous.", Group = Rating)]
    public Duty? Duty { get; init; }

    /// <summary>Volts it can be connected for.</summary>
    [Field("Voltage", "Volts on the plate: 115, 208-230, 115/208-230 ... Each is a way to connect it.", Group = Supply)]
    public Taps? Voltage { get; init; }

    /// <summary>Whether its two voltages are for delta, the lower, and star, the higher.</summary>
    [Field("Delta and star", "Δ/Y beside two voltages 1 to 1.73 apart, such as 230/400: the lower is for delta, the higher for star.", Group = Supply)]
    public bool? StarDelta { get; init; }

    /// <summary>Which of the voltages it is connected for as it ships.</summary>
    [Field("Connected for", "Which of its voltages a new motor is connected for when it leaves the box.", Group = Supply)]
    public Taps? ConnectedFor { get; init; }

    /// <summary>Phases.</summary>
    [Field("Phase", "PH 1 or PH 3 on the plate.", Group = Supply)]
    public Phases? Phase { get; init; }

    /// <summary>Frequency, one figure a rating row, or all that every row takes.</summary>
    [Field("Frequency", "HZ on the plate: 60, 50 or 50/60.", Group = Supply)]
    public Figures<Frequency>? Frequency { get; init; }

    /// <summary>Full-load amps, one figure a rating row.</summary>
    [Field("Full-load amps", "A, FLA or AMPS on the plate; 5.4/2.8 stands beside two speeds or two voltages.", Group = Supply)]
    public Amps? FullLoadAmps { get; init; }

    /// <summary>Locked-rotor amps, one figure a rating row.</summary>
    [Field("Locked-rotor amps", "LRA on the plate: amps when it stands still.", Group = Supply)]
    public Amps? LockedRotorAmps { get; init; }

    /// <summary>Locked-rotor code letter.</summary>
    [Field("Code letter", "CODE on the plate, A to V: locked-rotor kVA a horsepower.", Group = Supply, Example = "G")]
    public string? CodeLetter { get; init; }

    /// <summary>Full-load efficiency.</summary>
    [Field("Efficiency", "EFF or NOM EFF on the plate, in percent.", Group = Supply)]
    public Ratio? Efficiency { get; init; }

    /// <summary>Full-load power factor, 0 to 1.</summary>
    [Field("Power factor", "PF or cos φ on the plate, such as 0.82.", Group = Supply, Example = "0.82")]
    public double? PowerFactor { get; init; }

    /// <summary>The run capacitor it needs, or none.</summary>
    [Field("Run capacitor", "CAP or MFD/VAC on the plate, such as 5/370; none if the motor has no capacitor.", Group = Supply)]
    public CapacitorRating? RunCapacitor { get; init; }

    /// <summary>How its leads are marked.</summary>
    [Field("Lead marks", "How the leads are named: T1 T2 ... (NEMA), U1 V1 W1 ... (IEC), or by colours only. It decides which connection drawing goes with the motor.", Group = Supply)]
    public Choices<LeadNames>? LeadMarks { get; init; }

    /// <summary>Frame.</summary>
    [Field("Frame", "FR on the plate: 48Y, 56C, IEC 71. It fixes the shaft height, and without Y or Z also the shaft.", Group = Mounting)]
    public FrameSize? Frame { get; init; }

    /// <summary>Ways in which it can be held.</summary>
    [Field("Mount", "How the motor is held, or all the ways in which a replacement can be.", Group = Mounting)]
    public Choices<MountKind>? Mounts { get; init; }

    /// <summary>Body diameter.</summary>
    [Field("Body diameter", "Across the shell, not the band: wrap a tape round the body and divide by 3.14.", Group = Mounting, Tool = Tool.Tape, Example = "5.6 in")]
    public Length? BodyDiameter { get; init; }

    /// <summary>Body length without shaft.</summary>
    [Field("Body length", "Length of the shell without the shaft.", Group = Mounting, Tool = Tool.Tape, Example = "4-3/8 in")]
    public Length? BodyLength { get; init; }

    /// <summary>Bolt circle of its studs.</summary>
    [Field("Stud circle", "Across the centres of two opposite studs.", Group = Mounting, Tool = Tool.Tape)]
    public Length? StudCircle { get; init; }

    /// <summary>Bolt circle of its face or flange.</summary>
    [Field("Face bolt circle", "Across the centres of two opposite holes of the face or flange.", Group = Mounting, Tool = Tool.Tape)]
    public Length? FaceBoltCircle { get; init; }

    /// <summary>Pilot diameter of its face or flange.</summary>
    [Field("Face pilot", "Diameter of the turned rim that centres the face.", Group = Mounting, Tool = Tool.Calipers)]
    public Length? FacePilot { get; init; }

    /// <summary>Shaft diameter.</summary>
    [Field("Shaft diameter", "Measured with calipers on the bare round shaft, not across the flat.", Group = ShaftGroup, Tool = Tool.Calipers)]
    public Length? ShaftDiameter { get; init; }

    /// <summary>Shaft length from the mounting face.</summary>
    [Field("Shaft length", "From the end bell to the tip.", Group = ShaftGroup, Tool = Tool.Tape)]
    public Length? ShaftLength { get; init; }

    /// <summary>Whether the shaft may be cut.</summary>
    [Field("Shaft can be cut", "Whether the shaft may be shortened.", Group = ShaftGroup)]
    public bool? ShaftCanBeCut { get; init; }

    /// <summary>Flat, keyway or round.</summary>
    [Field("Shaft form", "Flat, keyway or round, where the hub's set screw or key sits.", Group = ShaftGroup)]
    public ShaftForm? ShaftForm { get; init; }

    /// <summary>Length of the flat from the tip.</summary>
    [Field("Flat length", "Length of the flat, from the tip of the shaft.", Group = ShaftGroup, Tool = Tool.Tape)]
    public Length? FlatLength { get; init; }

    /// <summary>Shaft ends: 1 or 2.</summary>
    [Field("Shaft ends", "1, or 2 when a shaft comes out at both ends.", Group = ShaftGroup, Example = "1")]
    public int? ShaftEnds { get; init; }

    /// <summary>Its turn, with the end it is seen from.</summary>
    [Field("Rotation", "CW or CCW with the end it is seen from: shaft end or lead end. A bare CW is not enough: the same turn has opposite names from the two ends.", Group = ShaftGroup)]
    public Turn? Rotation { get; init; }

    /// <summary>How the turn can be changed.</summary>
    [Field("Reversing", "Whether the turn can be changed, and how.", Group = ShaftGroup)]
    public Reversing? Reversing { get; init; }

    /// <summary>Bearings.</summary>
    [Field("Bearings", "Sleeve or ball.", Group = ShaftGroup)]
    public Bearings? Bearings { get; init; }

    /// <summary>Positions the shaft may point in.</summary>
    [Field("Shaft positions", "Where the shaft may point: horizontal, shaft up, shaft down.", Group = ShaftGroup)]
    public Choices<ShaftPosition>? ShaftPositions { get; init; }

    /// <summary>Enclosure.</summary>
    [Field("Enclosure", "ODP, TENV, TEFC, TEAO, OAO on the plate; holes in the shell mean open.", Group = Inside)]
    public Enclosure? Enclosure { get; init; }

    /// <summary>IP code digits.</summary>
    [Field("IP code", "IP44, IP54 ... on IEC plates.", Group = Inside)]
    public IpCode? IpCode { get; init; }

    /// <summary>Drain holes.</summary>
    [Field("Drain holes", "Where the motor has drain holes.", Group = Inside)]
    public DrainHoles? DrainHoles { get; init; }

    /// <summary>Insulation class.</summary>
    [Field("Insulation class", "INS or CL on the plate: A, E, B, F or H.", Group = Inside)]
    public InsulationClass? Insulation { get; init; }

    /// <summary>Greatest ambient.</summary>
    [Field("Highest ambient", "AMB on the plate: the hottest air it may sit in.", Group = Inside)]
    public Temperature? AmbientMost { get; init; }

    /// <summary>Least ambient.</summary>
    [Field("Lowest ambient", "The coldest air it may sit in.", Group = Inside, Example = "-20 °C")]
    public Temperature? AmbientLeast { get; init; }

    /// <summary>Greatest altitude without derating.</summary>
    [Field("Highest altitude", "How high above sea level it carries its rating; 1000 m (3300 ft) where the plate is silent is the standards' assumption, not this motor's word.", Group = Inside, Example = "1000 m")]
    public Length? AltitudeMost { get; init; }

    /// <summary>Breakdown torque over rated torque.</summary>
    [Field("Breakdown torque", "In percent of the rated torque.", Group = Inside, Example = "180 %")]
    public Ratio? BreakdownTorque { get; init; }

    /// <summary>Protection inside.</summary>
    [Field("Overload protection", "Automatic, manual, impedance or none, inside the motor.", Group = Control)]
    public Protection? Protection { get; init; }

    /// <summary>Speed controls it is made for.</summary>
    [Field("Made for speed control", "Speed controls that the motor may be run by; none for full volts only.", Group = Control)]
    public Choices<SpeedControl>? SpeedControls { get; init; }

    /// <summary>Whether it reports its speed.</summary>
    [Field("Speed feedback", "Whether an electronically commutated motor has a lead that reports its speed.", Group = Control)]
    public bool? SpeedFeedback { get; init; }

    /// <summary>Marks for places where something could burn.</summary>
    [Field("Hazard marking", "Marks for classified areas or flammable refrigerants.", Group = Control)]
    public Choices<HazardMarking>? Hazards { get; init; }

    /// <summary>Whose habits the plate follows.</summary>
    [Field("Plate standard", "NEMA or IEC.", Group = Control)]
    public PlateStandard? Standard { get; init; }
}
