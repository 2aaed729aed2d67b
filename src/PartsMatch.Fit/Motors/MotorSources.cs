using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors;

/// <summary>Where the rules about supply, speed and power come from.</summary>
public static class MotorSources
{
    /// <summary>±10 % of volts, ±5 % of frequency, 10 % together; performance will not necessarily be as rated.</summary>
    public static Source Running { get; } = new("NEMA MG 1 12.44", SourceStatus.Published);

    /// <summary>One phase is two legs; three phases make the turning field of a three-phase motor.</summary>
    public static Source PhaseCount { get; } = new("A three-phase motor needs three phases; a single-phase one runs between any two legs", SourceStatus.Practice);

    /// <summary>Legs against neutral.</summary>
    public static Source LegToNeutral { get; } = new("Line to neutral is 1/√3 of line to line in a star, half of it on a centre tap", SourceStatus.Derived);

    /// <summary>Not below the old power, one step up is ordinary.</summary>
    public static Source NotLessPower { get; } = new("Not less than the old horsepower, at most one size more", SourceStatus.Practice);

    /// <summary>Nearest speed of the same pole count.</summary>
    public static Source SameSpeed { get; } = new("Same pole count and speed within 5 %; fan power goes with the cube of speed", SourceStatus.Practice);

    /// <summary>Torque line against the fan.</summary>
    public static Source FanLoad { get; } = new("Kloss's torque line through the rated point, torque with the square of volts (NEMA MG 1 12.44.2), against a fan's square of speed; fans load their motor to 70 to 100 % of its plate, and up to 5 % over a rating is not told apart from it (practice)", SourceStatus.Derived);

    /// <summary>n = 120 f / p.</summary>
    public static Source Synchronous { get; } = new("Synchronous speed 120 f / p", SourceStatus.Derived);

    /// <summary>Fan motors slip up to about 16 %.</summary>
    public static Source Slip { get; } = new("Synchronous speed 120 f / p, and slip of fan motors up to about 16 %", SourceStatus.Memory);

    /// <summary>A motor gives less than it takes.</summary>
    public static Source Energy { get; } = new("Power out is less than volts × amps × √phases in", SourceStatus.Derived);

    /// <summary>Watts in by volts, amps and power factor.</summary>
    public static Source LineWatts { get; } = new("Watts from the line are volts × amps × cos φ (× √3 for three phases); plates round within 5 %", SourceStatus.Practice);

    /// <summary>Output over input.</summary>
    public static Source Efficiency { get; } = new("Efficiency is power out over power in", SourceStatus.Derived);

    /// <summary>Delta for the lower volts, star for the higher.</summary>
    public static Source StarDelta { get; } = new("IEC 60034-8: one winding takes 1/√3 of the volts in delta that it takes in star", SourceStatus.Memory);

    /// <summary>Δ and Y beside volts.</summary>
    public static Source IecHabit { get; } = new("Plates by IEC 60034-1 print Δ and Y beside their volts; NEMA's print two voltages 1 to 2", SourceStatus.Practice);

    /// <summary>The old motor ran there.</summary>
    public static Source OldMotorRan { get; } = new("What the old motor ran on is there", SourceStatus.Practice);

    /// <summary>What a type of motor is.</summary>
    public static Source TypeOfMotor { get; } = new("By the definition of the type", SourceStatus.Derived);

    /// <summary>Horsepower is at the shaft, and so is a three-phase motor's rated power.</summary>
    public static Source ShaftPower { get; } = new("NEMA MG 1 10.40, IEC 60034-1: rated power is at the shaft", SourceStatus.Memory);

    /// <summary>What stands side by side on a plate is paired by position.</summary>
    public static Source SideBySide { get; } = new("Figures side by side on a plate are paired by position", SourceStatus.Practice);

    /// <summary>What a frame number without a mounting letter says.</summary>
    public static Source FeetOfFrame { get; } = new("NEMA MG 1 4.2 and 4.4.1: a frame number's dimensions are those of its feet, unless a letter names a face, a flange or a special mounting; that the feet are rigid is practice", SourceStatus.Published);

    /// <summary>How near a shaft must come to its frame's.</summary>
    public static Source SameShaft { get; } = new("Shafts are equal within 0.04 mm", SourceStatus.Practice);

    /// <summary>How far over its plate's amps a motor still runs.</summary>
    public static Source FarOverAmps { get; } = new("A fan motor that runs takes at most a quarter more than its plate's amps", SourceStatus.Practice);

    /// <summary>The equipment's plate says what the fan was made for.</summary>
    public static Source EquipmentPlate { get; } = new("The old motor may have been a wrong replacement: its plate and the equipment's agree within 10 %", SourceStatus.Practice);
}
