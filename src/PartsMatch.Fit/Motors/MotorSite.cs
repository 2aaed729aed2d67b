using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Motors;

/// <summary>What a motor will meet where it is put in. Null is unknown.</summary>
public sealed record MotorSite : Site
{
    private const string Supply = "Supply";
    private const string Fan = "Fan and hub";
    private const string Place = "Place";
    private const string Circuit = "Circuit";
    private const string Running = "Measured while it ran";

    /// <summary>Line-to-line volts measured at the motor's leads, one to three readings.</summary>
    [Field("Volts measured", "At the motor's leads with the circuit called for, line to line: one reading, or all three of a three-phase supply as 460/467/450.", Group = Supply, Tool = Tool.Meter)]
    public Figures<ElectricPotential>? Volts { get; init; }

    /// <summary>Line-to-neutral volts measured, one to three readings.</summary>
    [Field("Volts to neutral", "Line to neutral, where a neutral is there and measured: 120, or all three legs as 120/120/208.", Group = Supply, Tool = Tool.Meter)]
    public Figures<ElectricPotential>? NeutralVolts { get; init; }

    /// <summary>How the supply is arranged.</summary>
    [Field("Supply", "Single-phase, wye, delta or high-leg delta.", Group = Supply)]
    public SupplyArrangement? SupplyArrangement { get; init; }

    /// <summary>Phases that reach the motor.</summary>
    [Field("Phases there", "How many phases reach the motor.", Group = Supply)]
    public Phases? SupplyPhase { get; init; }

    /// <summary>Supply frequency.</summary>
    [Field("Supply frequency", "60 Hz or 50 Hz.", Group = Supply)]
    public Frequency? SupplyFrequency { get; init; }

    /// <summary>The turn the fan needs.</summary>
    [Field("Turn needed", "Which way the fan must turn, with the end it is seen from; the old motor's rotation if it was right.", Group = Fan)]
    public Turn? TurnNeeded { get; init; }

    /// <summary>Propeller or wheel.</summary>
    [Field("Fan", "Propeller or blower wheel.", Group = Fan)]
    public FanKind? FanKind { get; init; }

    /// <summary>Direct or belt.</summary>
    [Field("Drive", "Direct on the shaft, or by a belt.", Group = Fan)]
    public Drive? Drive { get; init; }

    /// <summary>Whether the old blade or wheel stays.</summary>
    [Field("Blade stays", "Whether the old blade or wheel goes onto the new motor.", Group = Fan)]
    public bool? BladeStays { get; init; }

    /// <summary>Bore of the hub.</summary>
    [Field("Hub bore", "Bore of the blade's hub, without a bushing.", Group = Fan, Tool = Tool.Calipers)]
    public Length? HubBore { get; init; }

    /// <summary>What the hub holds on to.</summary>
    [Field("Hub holds on", "What the hub's set screw or key sits on: flat, keyway or round.", Group = Fan, Tool = Tool.Ladder)]
    public ShaftForm? HubHoldsOn { get; init; }

    /// <summary>Shaft length that reaches the blade's place.</summary>
    [Field("Shaft needed", "Least length of shaft that puts the blade at its old depth in the ring.", Group = Fan, Tool = Tool.Tape)]
    public Length? ShaftLengthNeeded { get; init; }

    /// <summary>Room for the shaft in front.</summary>
    [Field("Room for shaft", "Greatest length of shaft that clears the guard.", Group = Fan, Tool = Tool.Tape)]
    public Length? ShaftRoom { get; init; }

    /// <summary>Blade diameter.</summary>
    [Field("Blade diameter", "Tip to tip.", Group = Fan, Example = "24 in", Tool = Tool.Tape)]
    public Length? BladeDiameter { get; init; }

    /// <summary>Number of blades.</summary>
    [Field("Blades", "How many blades.", Group = Fan, Example = "4", Tool = Tool.Ladder)]
    public int? Blades { get; init; }

    /// <summary>Pitch of the blades.</summary>
    [Field("Blade pitch", "Angle of the blades, if it is stamped on the hub.", Group = Fan, Tool = Tool.Ladder)]
    public Angle? BladePitch { get; init; }

    /// <summary>Which way the blades are pitched.</summary>
    [Field("Blade hand", "The turn that the blade is made for, with the end it is seen from; often stamped CW or CCW on the hub.", Group = Fan, Tool = Tool.Ladder)]
    public Turn? BladeHand { get; init; }

    /// <summary>Depth of the blade in its ring.</summary>
    [Field("Blade depth", "How far the blade's leading edge stands out of its ring, or the part of its width that is inside.", Group = Fan, Example = "1-1/2 in", Tool = Tool.Tape)]
    public Length? BladeDepth { get; init; }

    /// <summary>New blade's bore, where the blade is changed.</summary>
    [Field("New blade bore", "Bore of the new blade's hub, where the old one does not stay.", Group = Fan, Tool = Tool.Calipers)]
    public Length? NewBladeBore { get; init; }

    /// <summary>What the new blade's hub holds on to, where the blade is changed.</summary>
    [Field("New hub holds on", "What the new blade's set screw or key sits on, where the old blade does not stay: flat, keyway or round.", Group = Fan)]
    public ShaftForm? NewHubHoldsOn { get; init; }

    /// <summary>New blade's diameter, where the blade is changed.</summary>
    [Field("New blade diameter", "Tip to tip of the new blade, where it does not stay.", Group = Fan, Tool = Tool.Tape)]
    public Length? NewBladeDiameter { get; init; }

    /// <summary>How the place holds a motor.</summary>
    [Field("Mount there", "What is there to hold the motor: band, stud holes, cradle, base, face.", Group = Place)]
    public Choices<MountKind>? MountThere { get; init; }

    /// <summary>Diameter that the band or cradle there takes.</summary>
    [Field("Mount takes", "Body diameter that the band or ring there takes.", Group = Place, Tool = Tool.Tape)]
    public Length? MountDiameter { get; init; }

    /// <summary>Stud circle of the bracket there.</summary>
    [Field("Bracket's stud circle", "Across the centres of two opposite holes of the bracket.", Group = Place, Tool = Tool.Tape)]
    public Length? BracketStudCircle { get; init; }

    /// <summary>Bolt circle of the face there.</summary>
    [Field("Face there", "Bolt circle of the face the motor is bolted to.", Group = Place, Tool = Tool.Tape)]
    public Length? FaceBoltCircleThere { get; init; }

    /// <summary>Pilot of the face there.</summary>
    [Field("Face pilot there", "Diameter of the bore that centres the motor's face.", Group = Place, Example = "3 in", Tool = Tool.Calipers)]
    public Length? FacePilotThere { get; init; }

    /// <summary>Room for the body's length.</summary>
    [Field("Room for body", "Greatest body length that fits.", Group = Place, Tool = Tool.Tape)]
    public Length? BodyRoom { get; init; }

    /// <summary>Room for the body's diameter.</summary>
    [Field("Room round the body", "Greatest body diameter that fits.", Group = Place, Tool = Tool.Tape)]
    public Length? BodyDiameterRoom { get; init; }

    /// <summary>Where the shaft points.</summary>
    [Field("Shaft points", "Horizontal, up or down.", Group = Place)]
    public ShaftPosition? ShaftPosition { get; init; }

    /// <summary>Wet or dry.</summary>
    [Field("Surroundings", "Dry, rain, wash-down, or cold enough for water to condense on the motor.", Group = Place)]
    public Surroundings? Surroundings { get; init; }

    /// <summary>In the airstream or not.</summary>
    [Field("Cooling air", "Whether the motor sits in the air that its own fan moves.", Group = Place)]
    public CoolingAir? CoolingAir { get; init; }

    /// <summary>Hottest air round the motor.</summary>
    [Field("Hottest air", "The hottest air it will sit in: a condenser's leaving air counts.", Group = Place, Tool = Tool.Meter)]
    public Temperature? AirMost { get; init; }

    /// <summary>Coldest air round the motor.</summary>
    [Field("Coldest air", "The coldest air it will sit in.", Group = Place, Example = "-10 °F", Tool = Tool.Meter)]
    public Temperature? AirLeast { get; init; }

    /// <summary>Altitude.</summary>
    [Field("Altitude", "Above sea level.", Group = Place, Example = "5000 ft")]
    public Length? Altitude { get; init; }

    /// <summary>Hazard.</summary>
    [Field("Hazard", "Flammable refrigerant in the same space, or a classified area.", Group = Place)]
    public Hazard? Hazard { get; init; }

    /// <summary>Full-load amps the contact may carry.</summary>
    [Field("Contact carries", "Full-load amps of the contact that switches the motor.", Group = Circuit)]
    public ElectricCurrent? ContactFullLoadAmps { get; init; }

    /// <summary>Locked-rotor amps the contact may carry.</summary>
    [Field("Contact's locked-rotor amps", "Locked-rotor amps of the contact that switches the motor.", Group = Circuit)]
    public ElectricCurrent? ContactLockedRotorAmps { get; init; }

    /// <summary>Full-load amps of other motors on the same contact.</summary>
    [Field("Other motors' amps", "Full-load amps of all the other motors on the same contact, added up.", Group = Circuit, Tool = Tool.Meter)]
    public ElectricCurrent? OtherFullLoadAmps { get; init; }

    /// <summary>Locked-rotor amps of other motors on the same contact.</summary>
    [Field("Other motors' locked-rotor amps", "Locked-rotor amps of all the other motors on the same contact, added up.", Group = Circuit)]
    public ElectricCurrent? OtherLockedRotorAmps { get; init; }

    /// <summary>Fuse or breaker.</summary>
    [Field("Fuse", "Fuse or breaker of the branch circuit.", Group = Circuit)]
    public ElectricCurrent? Fuse { get; init; }

    /// <summary>Setting of the overload device in the circuit.</summary>
    [Field("Overload set to", "What the overload device in the circuit is set to.", Group = Circuit)]
    public ElectricCurrent? OverloadSetting { get; init; }

    /// <summary>Full-load amps of the fan-cycling switch.</summary>
    [Field("Cycling switch carries", "Full-load amps of a pressure or temperature switch that cycles the fan.", Group = Circuit)]
    public ElectricCurrent? CyclingSwitchFullLoadAmps { get; init; }

    /// <summary>Locked-rotor amps of the fan-cycling switch.</summary>
    [Field("Cycling switch's locked-rotor amps", "Locked-rotor amps of a pressure or temperature switch that cycles the fan.", Group = Circuit)]
    public ElectricCurrent? CyclingSwitchLockedRotorAmps { get; init; }

    /// <summary>Overload protection in the circuit.</summary>
    [Field("Overload in circuit", "Whether an overload device in the circuit guards the motor.", Group = Circuit)]
    public bool? OverloadInCircuit { get; init; }

    /// <summary>Speed control in use.</summary>
    [Field("Speed control there", "What controls the speed now: none, phase cut, drive, a signal.", Group = Circuit)]
    public SpeedControl? SpeedControl { get; init; }

    /// <summary>Run capacitor that is there.</summary>
    [Field("Capacitor there", "The capacitor that is there, such as 5 µF 370 V; 45+5 µF 440 V when it is shared with the compressor.", Group = Circuit)]
    public CapacitorRating? CapacitorThere { get; init; }

    /// <summary>Speeds in use.</summary>
    [Field("Speeds used", "How many speeds the controls use.", Group = Circuit, Example = "1")]
    public int? SpeedsUsed { get; init; }

    /// <summary>Fan amps on the equipment's own plate.</summary>
    [Field("Equipment plate's fan amps", "Fan motor amps on the equipment's own plate.", Group = Circuit)]
    public ElectricCurrent? EquipmentFanAmps { get; init; }

    /// <summary>Fan power on the equipment's own plate.</summary>
    [Field("Equipment plate's fan power", "Fan motor power on the equipment's own plate.", Group = Circuit)]
    public Power? EquipmentFanPower { get; init; }

    /// <summary>Which fan the measurements are of.</summary>
    [Field("Measured on", "The old fan itself, or a sister fan of the same kind beside it.", Group = Running)]
    public MeasuredFan? MeasuredOn { get; init; }

    /// <summary>Speed measured on the old or a sister fan.</summary>
    [Field("Speed measured", "Speed of the old fan, or of a sister fan, with a tachometer.", Group = Running, Tool = Tool.Meter)]
    public RotationalSpeed? MeasuredSpeed { get; init; }

    /// <summary>Amps measured on the old or a sister fan.</summary>
    [Field("Amps measured", "Amps of the old fan, or of a sister fan, with a clamp meter.", Group = Running, Tool = Tool.Meter)]
    public ElectricCurrent? MeasuredAmps { get; init; }

    /// <summary>Input power measured on the old or a sister fan.</summary>
    [Field("Power measured", "Input power of the old fan, or of a sister fan.", Group = Running, Tool = Tool.Meter)]
    public Power? MeasuredInput { get; init; }

    /// <summary>How many fans blow through the same coil.</summary>
    [Field("Fans on the coil", "How many fans blow through the same coil.", Group = Running)]
    public int? FansOnCoil { get; init; }
}
