using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.DefrostTimers;

/// <summary>What ends a defrost before the fail-safe does.</summary>
public enum DefrostEnd
{
    /// <summary>The clock alone: it lasts as long as it is set.</summary>
    [Words("time", "time terminated", "time termination", "terminated by time", "time initiated time terminated")]
    Time,

    /// <summary>A switch on the coil that feeds the release solenoid.</summary>
    [Words("temperature", "temp", "temperature terminated", "temperature termination", "temp terminated", "temp termination", "terminated by temperature", "solenoid release", "time initiated temperature terminated", "time initiated temp terminated", "time initiated temp term")]
    Temperature,

    /// <summary>Bellows in the timer that feel the suction pressure.</summary>
    [Words("pressure", "pressure terminated", "pressure termination", "terminated by pressure", "press terminated", "time initiated pressure terminated")]
    Pressure,
}

/// <summary>What contacts of a timer are there for.</summary>
public enum TimerContact
{
    /// <summary>Closes in defrost, and feeds the heaters.</summary>
    [Words("heater", "heater contact", "heaters", "defrost heater")]
    Heater,

    /// <summary>Opens in defrost, and feeds the fans otherwise.</summary>
    [Words("fans", "fan contact", "fan", "evaporator fan", "evap fan")]
    Fans,

    /// <summary>Opens in defrost, and feeds the compressor or its contactor otherwise.</summary>
    [Words("compressor", "compressor contact", "comp")]
    Compressor,

    /// <summary>Keeps the fans off after defrost, until the coil is cold again.</summary>
    [Words("fan delay", "delayed fan start", "fan delay contact")]
    FanDelay,

    /// <summary>Opens the liquid-line solenoid valve's circuit, so that the coil is pumped down before it is heated.</summary>
    [Words("pump-down", "pump down", "pumpdown", "pump-down contact")]
    PumpDown,
}

/// <summary>What the clock counts.</summary>
public enum ClockKind
{
    /// <summary>The hours of the day: it must never stop.</summary>
    [Words("24-hour clock", "24 hour clock", "24 hour dial", "24 hr dial", "24 hour", "24 hr", "time of day")]
    TimeOfDay,

    /// <summary>The hours that the compressor runs.</summary>
    [Words("running time", "cumulative", "cumulative run time", "compressor running time", "compressor run time", "run time", "accumulated run time")]
    RunningTime,
}

/// <summary>What a timer sits in.</summary>
public enum TimerBody
{
    /// <summary>A box of its own.</summary>
    [Words("in its own box", "with box", "boxed", "in box", "with enclosure", "enclosed")]
    Boxed,

    /// <summary>Nothing: a mechanism that snaps into the box of the old one.</summary>
    [Words("mechanism only", "mechanism", "without box", "less box", "less enclosure", "movement only")]
    Mechanism,
}

/// <summary>What a terminal of a timer is there for.</summary>
public enum TerminalFunction
{
    /// <summary>The line that its contacts share.</summary>
    [Words("common", "line", "L1")]
    Common,

    /// <summary>The other line, of the clock.</summary>
    [Words("clock", "neutral", "N", "L2")]
    Clock,

    /// <summary>Heaters.</summary>
    [Words("heater", "heaters", "defrost")]
    Heater,

    /// <summary>Fans.</summary>
    [Words("fans", "fan")]
    Fans,

    /// <summary>Compressor, or its contactor or solenoid valve.</summary>
    [Words("compressor", "liquid solenoid", "cooling")]
    Compressor,

    /// <summary>Release solenoid.</summary>
    [Words("release", "termination")]
    Release,
}
