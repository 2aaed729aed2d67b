using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Valves.SolenoidValves;

/// <summary>Where the rules for solenoid valves come from.</summary>
public static class SolenoidValveSources
{
    /// <summary>Closed or open without power.</summary>
    public static Source NormalState { get; } = new("A normally closed valve opens when energised, a normally open one closes (public teaching pages)", SourceStatus.Published);

    /// <summary>15 % under to 5 % over the rated volts.</summary>
    public static Source CoilVolts { get; } = new("UFGS 15652A, 2.21.3: solenoid valves work from 15 % under to 5 % over their rated volts; to 10 % over with a caution (practice)", SourceStatus.Published);

    /// <summary>Highest inlet less lowest outlet pressure.</summary>
    public static Source OpeningDifferential { get; } = new("A valve opens against its largest opening differential and no more: 250 psi in and 50 psi out need 200 psi, found at 85 % of the volts with a hot coil (public teaching page); on one body direct current lifts less than alternating current (practice)", SourceStatus.Published);

    /// <summary>Drop by the flow coefficient.</summary>
    public static Source Capacity { get; } = new("IEC 60534-2-1: liquid with choking, gas with the expansion factor; a pilot-operated valve needs its least drop to lift, and liquid must not flash before the expansion valve", SourceStatus.Published);

    /// <summary>The VA of the contact that feeds it.</summary>
    public static Source CoilContact { get; } = new("A contact opens the holding VA, and closes on the inrush VA, of all coils on it: NEMA ICS 5 table 1-4-1, IEC 60947-5-1 annex A, by columns of their own for direct current; below 120 V the amps of 120 V hold, and of direct current the VA up to the amps carried all day (from memory)", SourceStatus.Published);

    /// <summary>No least drop for a direct-acting valve.</summary>
    public static Source DirectActing { get; } = new("A direct-acting valve is lifted by its magnet alone, from no differential on", SourceStatus.Derived);

    /// <summary>Inlet and outlet of one size.</summary>
    public static Source SameBothSides { get; } = new("Where one size is given, both sides have it", SourceStatus.Practice);

    /// <summary>Direct current has no frequency.</summary>
    public static Source CoilFrequency { get; } = new("Only alternating current has a frequency", SourceStatus.Derived);
}
