using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Valves.ExpansionValves;

/// <summary>Where the limits of readings come from of expansion valves.</summary>
public static class ExpansionValveReadingSources
{
    /// <summary>Superheat at an expansion valve's bulb.</summary>
    public static Source BulbSuperheat { get; } = new("Superheat at the bulb of 5 to 15 °F (2.8 to 8.3 K) is usual; it is pipe temperature less dew temperature", SourceStatus.Practice);

    /// <summary>What starves a coil beside its valve.</summary>
    public static Source StarvedCoil { get; } = new("Bubbles before an expansion valve, a loose bulb or a coil without air are mended before the valve is judged", SourceStatus.Practice);

    /// <summary>Warming and chilling the bulb.</summary>
    public static Source BulbTest { get; } = new("A valve that neither opens with a warm bulb nor closes with a chilled one has lost its charge or is stuck", SourceStatus.Practice);
}
