using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>What keeps the volts from a motor.</summary>
public enum CircuitState
{
    /// <summary>Nothing: all is closed.</summary>
    [Words("all closed", "closed", "nothing")]
    AllClosed,

    /// <summary>A fan-cycling switch below its cut-in.</summary>
    [Words("fan-cycling switch open", "cycling switch open", "fan switch open")]
    CyclingSwitchOpen,

    /// <summary>A delay: defrost, fan delay, anti-short-cycle.</summary>
    [Words("delay running", "defrost", "fan delay", "delay")]
    DelayRunning,

    /// <summary>A contactor that is not pulled in, or whose contact does not close.</summary>
    [Words("contactor open", "contactor not in")]
    ContactorOpen,

    /// <summary>A fuse or breaker.</summary>
    [Words("fuse blown", "breaker tripped", "fuse open", "fuse or breaker")]
    FuseBlown,

    /// <summary>A high-pressure control that tripped.</summary>
    [Words("high-pressure control tripped", "high pressure tripped", "high-pressure control")]
    HighPressureTripped,

    /// <summary>A low-pressure control that is open.</summary>
    [Words("low-pressure control open", "low pressure open", "low-pressure control")]
    LowPressureOpen,
}
