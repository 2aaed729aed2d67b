using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>What a thermostat is there for.</summary>
public enum ThermostatFunction
{
    /// <summary>Keeps a box, or the air, at its temperature.</summary>
    [Words("box thermostat", "air thermostat", "room thermostat", "cooler thermostat", "freezer thermostat", "space thermostat", "thermostat", "t-stat", "temperature control", "temp control", "temperature switch", "cold control", "box stat", "room stat", "cooler stat", "freezer stat", "cooling thermostat")]
    Box,

    /// <summary>Keeps the evaporator's fans off until the coil is cold.</summary>
    [Words("fan delay", "fan delay switch", "fan delay thermostat", "fan delay control", "fan thermostat", "fan switch", "evaporator fan delay", "evap fan delay", "fan stat", "evap fan stat", "evap fan control", "evaporator fan control", "evap fan switch", "evaporator fan switch", "evap fan thermostat", "evaporator fan thermostat")]
    FanDelay,

    /// <summary>Ends a defrost once the coil is warm.</summary>
    [Words("defrost end", "defrost termination", "defrost term", "defrost term switch", "defrost term thermostat", "defrost terminator", "defrost thermostat", "defrost end thermostat", "defrost end switch", "defrost termination thermostat", "defrost termination switch", "defrost termination control", "end of defrost", "defrost stat", "defrost term stat", "termination thermostat", "termination stat", "termination switch", "term thermostat")]
    DefrostEnd,

    /// <summary>Both of these in one switch with three wires.</summary>
    [Words(
        "fan delay and defrost end", "fan delay/defrost end", "defrost end/fan delay", "defrost end and fan delay", "fan delay/defrost termination", "fan delay and defrost termination", "fan delay & defrost termination",
        "defrost termination/fan delay", "defrost termination and fan delay", "defrost termination & fan delay", "defrost term/fan delay", "defrost termination fan delay switch", "fan delay defrost termination switch", "fan delay defrost term")]
    FanDelayAndDefrostEnd,

    /// <summary>Stops what would freeze something.</summary>
    [Words("low limit", "low limit thermostat", "low temperature limit", "low temp limit", "low temperature cutout", "low temperature cut-out", "freeze limit", "freeze stat", "freeze thermostat", "freeze protection", "freeze protection thermostat", "freeze control", "low temp cutout", "low temp cut-out", "low limit stat")]
    LowLimit,

    /// <summary>Stops what would overheat something.</summary>
    [Words("high limit", "high limit thermostat", "high limit switch", "high temperature limit", "high temp limit", "heater limit", "heater safety", "heater safety thermostat", "safety limit", "over-temperature limit", "hi limit", "hi limit stat", "high limit stat", "hi temp limit")]
    HighLimit,
}

/// <summary>What its contacts do.</summary>
public enum ThermostatAction
{
    /// <summary>They open as it gets warmer.</summary>
    [Words("opens on rise", "open on rise", "opens on increase", "opens on temperature rise", "closes on fall", "close on fall", "opens on temp rise", "open on temp rise", "breaks on rise", "break on rise")]
    OpensOnRise,

    /// <summary>They close as it gets warmer, and open as it gets colder.</summary>
    [Words("closes on rise", "close on rise", "closes on increase", "closes on temperature rise", "opens on fall", "open on fall", "closes on temp rise", "close on temp rise", "makes on rise", "make on rise")]
    ClosesOnRise,

    /// <summary>They change over.</summary>
    [Words("change-over", "SPDT", "changeover", "double throw")]
    ChangeOver,
}

/// <summary>How the common contact of change-over contacts is marked.</summary>
public enum CommonMark
{
    /// <summary>C or COM.</summary>
    [Words("C", "COM", "common")]
    C,

    /// <summary>1.</summary>
    [Words("1")]
    One,

    /// <summary>2.</summary>
    [Words("2")]
    Two,

    /// <summary>A red lead.</summary>
    [Words("red lead", "red")]
    Red,

    /// <summary>A brown lead.</summary>
    [Words("brown lead", "brown")]
    Brown,

    /// <summary>A black lead.</summary>
    [Words("black lead", "black")]
    Black,
}

/// <summary>What feels the temperature, and how it is held.</summary>
public enum BulbForm
{
    /// <summary>A straight bulb on a capillary.</summary>
    [Words("straight bulb", "remote bulb", "bulb", "pencil bulb")]
    Straight,

    /// <summary>A coiled bulb, for air.</summary>
    [Words("coiled bulb", "coil bulb", "coiled", "air coil bulb")]
    Coiled,

    /// <summary>A capillary that feels along all its length.</summary>
    [Words("averaging capillary", "averaging element", "averaging bulb", "averaging")]
    Averaging,

    /// <summary>A disc that is strapped or screwed on.</summary>
    [Words("strap-on disc", "strap-on", "strap mount", "disc", "snap disc", "bimetal disc", "surface mount", "strap on disc type")]
    StrapOnDisc,

    /// <summary>A disc with a clip for a tube.</summary>
    [Words("clip-on disc", "clip-on", "tube clip", "clip mount", "spring clip", "tube clamp", "pipe clip", "pipe clamp")]
    ClipOnDisc,
}

/// <summary>How its wires go on.</summary>
public enum ThermostatEnds
{
    /// <summary>Leads of its own.</summary>
    [Words("leads", "wire leads", "lead wires", "flying leads", "pigtails")]
    Leads,

    /// <summary>Quick-connects of 1/4 in.</summary>
    [Words("quick connects", "quick connect", "1/4 in quick connects", "QC", "spades", "tabs")]
    QuickConnects,

    /// <summary>Binding screws.</summary>
    [Words("screws", "screw terminals", "binding screws")]
    Screws,
}
