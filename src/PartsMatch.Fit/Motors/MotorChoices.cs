using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>How a motor makes its torque.</summary>
public enum MotorType
{
    /// <summary>Small induction motor with a shading ring; cannot be reversed electrically.</summary>
    [Words("shaded pole", "SHADED-POLE", "SHD POLE", "SHP", "SHADED POLE MOTOR", "SH POLE")]
    ShadedPole,

    /// <summary>Induction motor whose capacitor stays in circuit.</summary>
    [Words("permanent split capacitor", "PSC", "perm split cap", "perm split capacitor", "PERM SPLIT", "PERM-SPLIT CAP MOTOR")]
    PermanentSplitCapacitor,

    /// <summary>Induction motor with a resistance start winding and a centrifugal switch.</summary>
    [Words("split phase", "split-phase", "SPLIT PH", "resistance start")]
    SplitPhase,

    /// <summary>Induction motor with a capacitor that a switch takes out after start.</summary>
    [Words("capacitor start", "cap start", "CSIR", "CSI", "cap start induction run")]
    CapacitorStart,

    /// <summary>Induction motor with a start and a run capacitor.</summary>
    [Words("capacitor start capacitor run", "CSCR", "cap start cap run")]
    CapacitorStartCapacitorRun,

    /// <summary>Three-phase squirrel-cage induction motor.</summary>
    [Words("three-phase induction", "squirrel cage", "SCIM")]
    ThreePhaseInduction,

    /// <summary>Permanent-magnet motor with its own electronics.</summary>
    [Words("electronically commutated", "ECM", "EC motor", "brushless DC", "BLDC")]
    ElectronicallyCommutated,
}

/// <summary>Phases of a motor or supply.</summary>
public enum Phases
{
    /// <summary>Single-phase.</summary>
    [Words("single-phase", "1", "1 ph", "1-ph", "1 phase", "single", "SINGLE PH", "ONE PHASE", "1 Ø", "1 Φ", "1~")]
    Single,

    /// <summary>Three-phase.</summary>
    [Words("three-phase", "3", "3 ph", "3-ph", "3 phase", "three", "THREE PH", "3 Ø", "3 Φ", "3~")]
    Three,
}

/// <summary>Whether a plate's power is taken from the line or given at the shaft.</summary>
public enum PowerMeaning
{
    /// <summary>Given at the shaft.</summary>
    [Words("output", "shaft", "out")]
    Output,

    /// <summary>Taken from the line.</summary>
    [Words("input", "in")]
    Input,
}

/// <summary>How a motor of several speeds has them.</summary>
public enum SpeedMeans
{
    /// <summary>One winding with taps: the lower speeds are high-slip taps of the same pole count.</summary>
    [Words("tapped winding", "taps", "tapped")]
    TappedWinding,

    /// <summary>A winding of its own for each pole count.</summary>
    [Words("separate windings", "two windings", "2 winding", "two winding")]
    SeparateWindings,

    /// <summary>Set by its electronics.</summary>
    [Words("electronic", "variable", "variable speed")]
    Electronic,
}

/// <summary>Insulation classes (IEC 60085).</summary>
public enum InsulationClass
{
    /// <summary>105 °C.</summary>
    [Words("A")]
    A,

    /// <summary>120 °C.</summary>
    [Words("E")]
    E,

    /// <summary>130 °C.</summary>
    [Words("B")]
    B,

    /// <summary>155 °C.</summary>
    [Words("F")]
    F,

    /// <summary>180 °C.</summary>
    [Words("H")]
    H,
}

/// <summary>How long a motor may carry its rating.</summary>
public enum Duty
{
    /// <summary>Without end: S1.</summary>
    [Words("continuous", "cont", "CONTIN", "CONT DUTY", "CONTINUOUS DUTY", "S1")]
    Continuous,

    /// <summary>For a time: S2 to S10.</summary>
    [Words("intermittent", "INT", "INTERMITTENT DUTY", "S2", "S3")]
    Intermittent,
}

/// <summary>What guards the winding from inside the motor.</summary>
public enum Protection
{
    /// <summary>Nothing.</summary>
    [Words("none", "no protector", "NO OL PROT")]
    None,

    /// <summary>A protector that closes again by itself.</summary>
    [Words("automatic", "auto", "AUTO PROT", "AUTO RESET", "AUTOMATIC RESET", "AUTO THERM PROT", "AUTO THERMAL PROT", "AUTO THERMALLY PROTECTED", "AUTOMATIC THERMAL PROTECTION", "THERMALLY PROTECTED AUTOMATIC", "THERM PROT AUTO", "AUTO OL", "AUTO OVERLOAD", "THERMALLY PROTECTED AUTO")]
    Automatic,

    /// <summary>A protector that is set back by hand.</summary>
    [Words("manual", "MANUAL RESET", "MAN RESET", "MANUAL OVERLOAD", "MANUAL OL", "MANUAL THERM PROT", "THERM PROT MAN", "MANUAL PROT", "THERMALLY PROTECTED MANUAL")]
    Manual,

    /// <summary>A protector whose way of closing again is not said (T.P.).</summary>
    [Words("thermal", "thermally protected", "T.P.", "THERM PROT", "THERMALLY PROT", "THERMAL PROTECTED", "THERM PROTECTED", "THERMALLY PROTECTED MOTOR", "THERMAL PROTECTOR", "THERMAL PROT", "THERMAL PROTECTION")]
    Thermal,

    /// <summary>A winding that survives a locked rotor (Z.P.).</summary>
    [Words("impedance", "impedance protected", "Z.P.", "IMP PROT", "IMP PROTECTED", "IMPED PROT", "IMPEDANCE PROT")]
    Impedance,
}

/// <summary>How a motor's speed is controlled from outside, or may be.</summary>
public enum SpeedControl
{
    /// <summary>Not at all: full volts and frequency.</summary>
    [Words("none", "no speed control")]
    None,

    /// <summary>By cutting the phase of the supply.</summary>
    [Words("phase cut", "phase cutting", "phase control", "triac")]
    PhaseCut,

    /// <summary>By a drive: inverter duty (MG 1 part 30, 31).</summary>
    [Words("drive", "inverter", "inverter duty", "VFD")]
    Drive,

    /// <summary>By a voltage signal of 0 to 10 V.</summary>
    [Words("0-10 V signal", "0-10V")]
    VoltageSignal,

    /// <summary>By a pulse-width signal.</summary>
    [Words("PWM signal", "PWM")]
    PulseSignal,
}

/// <summary>What a motor is marked for where something could burn.</summary>
public enum HazardMarking
{
    /// <summary>It says that it is for ordinary places.</summary>
    [Words("ordinary places", "none")]
    Ordinary,

    /// <summary>Mildly flammable refrigerant (A2L, ASHRAE 34).</summary>
    [Words("A2L")]
    A2L,

    /// <summary>Flammable refrigerant (A3, ASHRAE 34).</summary>
    [Words("A3")]
    A3,

    /// <summary>Class I Division 2 (NFPA 70 article 500).</summary>
    [Words("class I division 2", "CL I DIV 2", "C1D2")]
    ClassOneDivisionTwo,

    /// <summary>Class I Division 1 (NFPA 70 article 500): explosion-proof.</summary>
    [Words("class I division 1", "CL I DIV 1", "C1D1", "explosion-proof")]
    ClassOneDivisionOne,
}

/// <summary>Whose habits a plate follows.</summary>
public enum PlateStandard
{
    /// <summary>NEMA MG 1.</summary>
    [Words("NEMA", "NEMA MG 1")]
    Nema,

    /// <summary>IEC 60034.</summary>
    [Words("IEC", "IEC 60034", "IEC 60034-1")]
    Iec,
}

/// <summary>How a motor's leads are named.</summary>
public enum LeadNames
{
    /// <summary>T1 to T12 (NEMA MG 1 Part 2).</summary>
    [Words("NEMA marks", "T marks")]
    NemaMarks,

    /// <summary>U1 V1 W1 and so on (IEC 60034-8).</summary>
    [Words("IEC terminals")]
    IecTerminals,

    /// <summary>By colours, which no standard fixes.</summary>
    [Words("coloured", "colored")]
    Coloured,
}
