using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Valves;

/// <summary>Where the rules for all valves come from.</summary>
public static class ValveSources
{
    /// <summary>Listed refrigerants; copper alloys and ammonia.</summary>
    public static Source Refrigerant { get; } = new("A valve is used with the refrigerants its maker lists, never with one of a class (ASHRAE 34) that burns more readily than all of these; ammonia attacks copper and its alloys", SourceStatus.Practice);

    /// <summary>Listed oils.</summary>
    public static Source Oil { get; } = new("A valve is used with the oils its maker lists: seals made for one swell or shrink in another", SourceStatus.Practice);

    /// <summary>Working pressure at least the design pressure.</summary>
    public static Source WorkingPressure { get; } = new("A part's highest working pressure is at least the design pressure of its side (ASHRAE 15)", SourceStatus.Memory);

    /// <summary>Same size and joint, or fittings.</summary>
    public static Source Connections { get; } = new("Tube sizes by their outside diameter; another size takes reducers, another joint new ends", SourceStatus.Practice);

    /// <summary>One-way valves in reversing lines.</summary>
    public static Source BothWays { get; } = new("A one-way solenoid valve is lifted by pressure from behind", SourceStatus.Practice);

    /// <summary>The old valve's place.</summary>
    public static Source AsTheOld { get; } = new("What fitted the old valve is there for the new one", SourceStatus.Practice);

    /// <summary>Brazing near seals.</summary>
    public static Source Brazing { get; } = new("Valves are kept cool while they are brazed, and nitrogen flows through the pipe", SourceStatus.Practice);

    /// <summary>Who may open a refrigerant circuit.</summary>
    public static Source Certified { get; } = new("Refrigerant circuits are opened by certified people alone, and refrigerant is recovered (US Clean Air Act, section 608)", SourceStatus.Published);
}
