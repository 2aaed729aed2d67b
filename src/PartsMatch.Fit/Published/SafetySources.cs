using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Published;

/// <summary>Where the steps that make a job safe come from.</summary>
public static class SafetySources
{
    /// <summary>Shut down, isolate, lock, relieve what is stored, verify.</summary>
    public static Source LockOut { get; } = new("OSHA 29 CFR 1910.147(d)", SourceStatus.Published);

    /// <summary>Push buttons, selectors and interlocks are not the sole means of isolation; capacitors are discharged.</summary>
    public static Source ControlsIsolateNothing { get; } = new("OSHA 29 CFR 1910.333(b)(2)", SourceStatus.Published);

    /// <summary>Every conductor against every other and against earth, the meter proved before and after.</summary>
    public static Source ProveDead { get; } = new("NFPA 70E 120.5", SourceStatus.Memory);

    /// <summary>50 V or less within a minute is asked of installations, not of a capacitor by itself.</summary>
    public static Source Discharge { get; } = new("NFPA 70 460.6", SourceStatus.Published);

    /// <summary>10 to 20 kΩ, 2 to 5 W.</summary>
    public static Source DischargeResistor { get; } = new("10 to 20 kΩ, 2 to 5 W", SourceStatus.Practice);
}
