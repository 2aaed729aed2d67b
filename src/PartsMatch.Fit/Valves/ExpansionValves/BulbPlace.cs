using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.ExpansionValves;

/// <summary>Where an expansion valve's bulb feels the suction pipe.</summary>
public enum BulbPlace
{
    /// <summary>On the pipe, under straps.</summary>
    [Words("strapped on", "strap-on", "strapped", "clamped on")]
    StrappedOn,

    /// <summary>In a well in the pipe.</summary>
    [Words("in a well", "well", "pocket", "immersion well")]
    InWell,
}
