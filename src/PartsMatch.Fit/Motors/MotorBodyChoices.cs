using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>How a motor's turn can be changed.</summary>
public enum Reversing
{
    /// <summary>It cannot.</summary>
    [Words("fixed", "not reversible", "non-reversible")]
    Fixed,

    /// <summary>By turning round a plug outside the motor.</summary>
    [Words("by plug", "plug", "reversing plug")]
    ByPlug,

    /// <summary>By changing over two leads.</summary>
    [Words("by leads", "leads", "reversible", "REV", "REVERS", "REVBL", "REV ROTATION", "REV ROT", "CW OR CCW", "CW & CCW", "EITHER", "EITHER ROTATION", "CW/CCW", "CCW/CW", "REVERSIBLE ROTATION")]
    ByLeads,

    /// <summary>By a setting of its electronics.</summary>
    [Words("by setting", "program", "setting")]
    BySetting,
}

/// <summary>How a motor is held.</summary>
public enum MountKind
{
    /// <summary>A band round the body.</summary>
    [Words("belly band", "band", "bellyband", "BAND MOUNT", "BELLY BAND MOUNT")]
    BellyBand,

    /// <summary>Studs: the through bolts made longer, at the shaft end or both.</summary>
    [Words("through-bolt studs", "studs", "thru bolt", "through bolt", "extended studs", "THRU-BOLT", "STUD MOUNT", "EXT STUD")]
    Studs,

    /// <summary>Rubber rings in a cradle.</summary>
    [Words("resilient cradle", "resilient", "cradle", "resilient base", "RES BASE", "RESILIENT MOUNT", "RESILIENT RING")]
    ResilientCradle,

    /// <summary>Feet without rubber; IM B3.</summary>
    [Words("rigid base", "rigid", "feet", "foot", "IM B3", "B3", "RIGID MOUNT")]
    RigidBase,

    /// <summary>A face with tapped holes: NEMA C, IEC IM B14.</summary>
    [Words("tapped face", "C-face", "C face", "IM B14", "B14")]
    TappedFace,

    /// <summary>A flange with clearance holes: IEC IM B5.</summary>
    [Words("flange", "IM B5", "B5", "D flange")]
    Flange,

    /// <summary>Ears or lugs on the body.</summary>
    [Words("ears", "lugs", "ear mount", "lug mount")]
    Ears,

    /// <summary>Three points at 120 degrees.</summary>
    [Words("three-point", "3-point", "3 point", "three point", "torsion flex")]
    ThreePoint,
}

/// <summary>What the shaft offers to a hub's set screw or key.</summary>
public enum ShaftForm
{
    /// <summary>Round all the way.</summary>
    [Words("round", "plain")]
    Round,

    /// <summary>One flat.</summary>
    [Words("flat", "with flat", "one flat", "single flat", "D shaft")]
    Flat,

    /// <summary>Two flats.</summary>
    [Words("double flat", "two flats", "2 flats", "dual flat")]
    DoubleFlat,

    /// <summary>A keyway.</summary>
    [Words("keyway", "keyed", "key")]
    Keyway,
}

/// <summary>How a motor is enclosed and cooled (NEMA MG 1 1.25, 1.26).</summary>
public enum Enclosure
{
    /// <summary>Open drip-proof: for dry places.</summary>
    [Words("open drip-proof", "ODP", "DP", "drip proof", "dripproof", "open dripproof")]
    OpenDripProof,

    /// <summary>Open, cooled by the air of the fan it drives.</summary>
    [Words("open air over", "OAO", "OPAO", "open air-over", "OPEN AO")]
    OpenAirOver,

    /// <summary>Totally enclosed, without a fan.</summary>
    [Words("totally enclosed non-ventilated", "TENV", "totally enclosed nonventilated", "TOT ENCL NON VENT", "TE NON VENT")]
    EnclosedNonVentilated,

    /// <summary>Totally enclosed, with its own outside fan.</summary>
    [Words("totally enclosed fan-cooled", "TEFC", "totally enclosed fan cooled", "TOT ENCL FAN COOLED")]
    EnclosedFanCooled,

    /// <summary>Totally enclosed, cooled by the air of the fan it drives.</summary>
    [Words("totally enclosed air over", "TEAO", "totally enclosed air-over", "TOT ENCL AIR OVER", "TE AIR OVER", "TEAO AIR OVER")]
    EnclosedAirOver,
}

/// <summary>What the shaft runs in.</summary>
public enum Bearings
{
    /// <summary>Sleeves.</summary>
    [Words("sleeve", "sleeve brg", "sleeve bearing", "sleeve bearings", "SLV", "SLV BRG", "SLEEVE BRGS", "SLEEVE BRNG", "SLEEVE BRNGS")]
    Sleeve,

    /// <summary>Balls.</summary>
    [Words("ball", "ball brg", "ball bearing", "ball bearings", "BALL BRGS", "BB", "BALL BRNG", "BALL BRNGS")]
    Ball,
}

/// <summary>Where a shaft points.</summary>
public enum ShaftPosition
{
    /// <summary>Level.</summary>
    [Words("horizontal", "shaft horizontal", "HORIZ", "SHAFT HORIZ")]
    Horizontal,

    /// <summary>Up.</summary>
    [Words("shaft up", "up", "VERT SHAFT UP", "IM V6")]
    Up,

    /// <summary>Down.</summary>
    [Words("shaft down", "down", "VERT SHAFT DOWN", "IM V1", "IM V18")]
    Down,
}

/// <summary>Where drain holes are.</summary>
public enum DrainHoles
{
    /// <summary>There are none.</summary>
    [Words("none", "no drains")]
    None,

    /// <summary>At the shaft end.</summary>
    [Words("shaft end")]
    ShaftEnd,

    /// <summary>At the lead end.</summary>
    [Words("lead end")]
    LeadEnd,

    /// <summary>At both ends, with plugs.</summary>
    [Words("both ends", "both")]
    BothEnds,
}
