using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.PressureControls;

/// <summary>Where the rules for pressure controls come from.</summary>
public static class PressureControlSources
{
    /// <summary>The same function.</summary>
    public static Source Function { get; } = new("A pressure control is replaced by one of the same function", SourceStatus.Practice);

    /// <summary>The same action.</summary>
    public static Source Action { get; } = new("High-pressure controls open on rise, low-pressure controls on fall (public articles); fan-cycling controls close on rise (practice); that they do nothing besides is taken of an old one that does not say it (practice)", SourceStatus.Published);

    /// <summary>Reset.</summary>
    public static Source Reset { get; } = new("A manual-reset high-pressure safety is never replaced by an automatic one", SourceStatus.Practice);

    /// <summary>Poles.</summary>
    public static Source Poles { get; } = new("As many poles as the old one; one too many stays unused", SourceStatus.Practice);

    /// <summary>What ammonia eats.</summary>
    public static Source Materials { get; } = new("Ammonia eats copper and brass", SourceStatus.Memory);

    /// <summary>Cut-out and cut-in.</summary>
    public static Source Settings { get; } = new("The range holds cut-out and cut-in; one that cannot be set is within 5 psi of both", SourceStatus.Practice);

    /// <summary>The distance between the two.</summary>
    public static Source Differential { get; } = new("The differential is the distance of cut-in and cut-out: low pressure, cut-out = cut-in − differential (public articles); high pressure, cut-in = cut-out − differential", SourceStatus.Published);

    /// <summary>Under design and relief.</summary>
    public static Source HighSetting { get; } = new("ASHRAE 15: a high-pressure control opens at the design pressure at most, and at 90 % of the relief's setting at most", SourceStatus.Memory);

    /// <summary>Test pressure.</summary>
    public static Source WorkingPressure { get; } = new("A part's highest working pressure is not less than its side's test pressure", SourceStatus.Practice);

    /// <summary>How it is connected.</summary>
    public static Source Connection { get; } = new("The same connection, or a fitting between", SourceStatus.Practice);
}
