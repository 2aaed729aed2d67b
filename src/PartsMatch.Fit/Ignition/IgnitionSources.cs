using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Ignition;

/// <summary>Where the rule about sources of ignition comes from.</summary>
public static class IgnitionSources
{
    /// <summary>Nothing that sparks.</summary>
    public static Source Hazard { get; } = new("ASHRAE 15 and IEC 60335-2-40, -2-89 (flammable refrigerants): open contacts are a source of ignition; sealed ones, or none, by their listing", SourceStatus.Memory);
}
