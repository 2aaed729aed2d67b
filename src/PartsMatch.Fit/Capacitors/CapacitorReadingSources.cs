using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Capacitors;

/// <summary>Where the limits of readings come from of run capacitors.</summary>
public static class CapacitorReadingSources
{
    /// <summary>Capacitor under load.</summary>
    public static Source CapacitorUnderLoad { get; } = new("C = 10⁶·I / (2π·f·V), and run capacitors keep within ±6 % (EIA-456-A practice, public articles)", SourceStatus.Published);

    /// <summary>Capacitor's look.</summary>
    public static Source CapacitorLook { get; } = new("A run capacitor that bulges or leaks has failed", SourceStatus.Practice);

    /// <summary>Overvoltage of a capacitor.</summary>
    public static Source CapacitorVolts { get; } = new("IEC 60252-1: a run capacitor bears up to 110 % of its marked volts", SourceStatus.Memory);
}
