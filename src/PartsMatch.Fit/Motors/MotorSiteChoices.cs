using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>How the supply is arranged.</summary>
public enum SupplyArrangement
{
    /// <summary>Two wires of one phase, or three with a neutral between two hot legs.</summary>
    [Words("single-phase")]
    SinglePhase,

    /// <summary>Three phases from a star, the neutral in its middle: 208Y/120, 400/230.</summary>
    [Words("wye", "star", "three-phase wye")]
    Wye,

    /// <summary>Three phases from a triangle without a neutral.</summary>
    [Words("delta", "three-phase delta")]
    Delta,

    /// <summary>A 240 V triangle with a neutral in the middle of one side: the third leg is high against it.</summary>
    [Words("high-leg delta", "high leg", "wild leg")]
    HighLegDelta,
}

/// <summary>What the motor turns.</summary>
public enum FanKind
{
    /// <summary>A propeller: turning backwards it blows the wrong way, and little.</summary>
    [Words("propeller", "axial", "blade")]
    Propeller,

    /// <summary>A blower wheel: turning backwards it still blows the right way, but less.</summary>
    [Words("blower wheel", "blower", "wheel", "squirrel cage wheel", "centrifugal")]
    BlowerWheel,
}

/// <summary>How the fan is driven.</summary>
public enum Drive
{
    /// <summary>The fan sits on the motor's shaft.</summary>
    [Words("direct", "direct drive")]
    Direct,

    /// <summary>By a belt.</summary>
    [Words("belt", "belt drive")]
    Belt,
}

/// <summary>What the motor is wetted by.</summary>
public enum Surroundings
{
    /// <summary>Nothing: indoors, dry.</summary>
    [Words("dry", "indoors")]
    Dry,

    /// <summary>Rain.</summary>
    [Words("rain", "outdoors")]
    Rain,

    /// <summary>A hose.</summary>
    [Words("wash-down", "washdown")]
    WashDown,

    /// <summary>Air cold enough for water to condense or freeze on it: coolers, freezers.</summary>
    [Words("condensing cold", "cooler", "freezer", "cold room")]
    CondensingCold,
}

/// <summary>What is in the air or the refrigerant that could burn.</summary>
public enum Hazard
{
    /// <summary>Nothing.</summary>
    [Words("none", "A1")]
    None,

    /// <summary>Mildly flammable refrigerant in the same space (A2L, ASHRAE 34).</summary>
    [Words("A2L refrigerant", "A2L")]
    A2L,

    /// <summary>Flammable refrigerant in the same space (A3, ASHRAE 34).</summary>
    [Words("A3 refrigerant", "A3")]
    A3,

    /// <summary>Class I Division 2 area (NFPA 70 article 500).</summary>
    [Words("class I division 2 area", "class I division 2")]
    ClassOneDivisionTwo,

    /// <summary>Class I Division 1 area (NFPA 70 article 500).</summary>
    [Words("class I division 1 area", "class I division 1")]
    ClassOneDivisionOne,
}

/// <summary>Which fan was measured.</summary>
public enum MeasuredFan
{
    /// <summary>The old fan itself, while it still ran.</summary>
    [Words("old fan", "old")]
    Old,

    /// <summary>A fan of the same kind beside it.</summary>
    [Words("sister fan", "sister")]
    Sister,
}

/// <summary>Where the airstream is.</summary>
public enum CoolingAir
{
    /// <summary>The motor sits in the air that its fan moves.</summary>
    [Words("in the airstream", "airstream")]
    InAirstream,

    /// <summary>It does not.</summary>
    [Words("still air", "out of the airstream")]
    StillAir,
}
