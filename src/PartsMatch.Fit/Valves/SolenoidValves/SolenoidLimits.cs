using PartsMatch.Fit.Coils;

namespace PartsMatch.Fit.Valves.SolenoidValves;

/// <summary>What solenoid valves bear.</summary>
internal static class SolenoidLimits
{
    /// <summary>85 to 105 % of the marked volts, to 110 % with a caution (UFGS 15652A, 2.21.3; practice over 105 %).</summary>
    public static CoilWindow Coil { get; } = new(0.85, 1.05, 1.10);
}
