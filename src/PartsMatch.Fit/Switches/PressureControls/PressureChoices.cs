using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.PressureControls;

/// <summary>What a pressure control is there for.</summary>
public enum PressureFunction
{
    /// <summary>Stops the compressor at too high a pressure.</summary>
    [Words("high pressure", "high press", "hi pressure", "hi press", "high pressure cutout", "high pressure cut-out", "high pressure control", "high pressure safety", "high pressure limit", "high press cutout", "high press cut-out", "high press limit", "hi press cutout", "hi press cut-out", "HP control", "HP switch", "HP cutout", "HP cut-out", "HP safety", "HP limit", "PSH", "PZH", "PZHH")]
    HighPressure,

    /// <summary>Stops it at too low a pressure, or by it for the temperature's sake.</summary>
    [Words("low pressure", "low press", "lo pressure", "lo press", "low pressure cutout", "low pressure cut-out", "low pressure control", "low press cutout", "low press cut-out", "lo press cutout", "lo press cut-out", "LP control", "LP switch", "LP cutout", "LP cut-out", "LP", "PSL")]
    LowPressure,

    /// <summary>Runs a condenser fan by the condensing pressure.</summary>
    [Words("fan cycling", "fan cycle", "fan control", "condenser fan", "cond fan", "head pressure fan", "fan cycling control", "fan cycling switch", "fan cycle control", "fan cycle switch", "condenser fan control", "condenser fan switch", "cond fan control", "cond fan switch", "cond fan sw")]
    FanCycling,
}

/// <summary>What its contacts do.</summary>
public enum PressureAction
{
    /// <summary>They open as pressure rises.</summary>
    [Words("opens on rise", "open on rise", "opens on increase", "closes on fall", "open high", "opens on press rise", "opens on pressure rise", "breaks on rise")]
    OpensOnRise,

    /// <summary>They open as pressure falls, and close as it rises.</summary>
    [Words("opens on fall", "open on fall", "opens on decrease", "closes on rise", "close on rise", "closes on increase", "open low", "closes on press rise", "closes on pressure rise", "makes on rise")]
    OpensOnFall,

    /// <summary>They change over.</summary>
    [Words("change-over", "SPDT", "changeover", "double throw")]
    ChangeOver,
}

/// <summary>How it is connected.</summary>
public enum PressureConnection
{
    /// <summary>A flare nut of 1/4 in on its own capillary.</summary>
    [Words("capillary with flare nut", "capillary", "cap tube", "capillary flare nut", "36 in capillary", "36 in cap", "36 in cap tube", "capillary 1/4 flare", "cap tube 1/4 flare", "36 in cap 1/4 flare", "36 in capillary 1/4 flare")]
    Capillary,

    /// <summary>A male flare of 1/4 in.</summary>
    [Words("1/4 in male flare", "male flare", "1/4 SAE male flare", "1/4 flare", "flare")]
    MaleFlare,

    /// <summary>A female flare of 1/4 in with a pin that opens a valve core.</summary>
    [Words("1/4 in female flare", "female flare", "1/4 SAE female flare", "1/4 SAE female", "female flare with depressor")]
    FemaleFlare,

    /// <summary>A taper thread of 1/4 in.</summary>
    [Words("1/4 in NPT", "1/4 NPT", "NPT")]
    Thread,

    /// <summary>A tube end to be brazed.</summary>
    [Words("braze", "solder", "ODF", "ODS", "1/4 ODF", "1/4 in ODF", "braze 1/4 ODF")]
    Braze,
}

/// <summary>What the refrigerant wets inside it.</summary>
public enum WettedMaterial
{
    /// <summary>Copper.</summary>
    [Words("copper")]
    Copper,

    /// <summary>Brass or bronze.</summary>
    [Words("brass", "bronze")]
    Brass,

    /// <summary>Steel or stainless steel.</summary>
    [Words("steel", "stainless steel", "stainless", "SS")]
    Steel,
}
