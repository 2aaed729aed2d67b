using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Published;

/// <summary>Where the rules for valves come from.</summary>
public static class ValveSources
{
    /// <summary>Listed refrigerants; copper alloys and ammonia.</summary>
    public static Source Refrigerant { get; } = new("A valve is used with the refrigerants its maker lists; ammonia attacks copper and its alloys", SourceStatus.Practice);

    /// <summary>Closed or open without power.</summary>
    public static Source NormalState { get; } = new("A normally closed valve opens when energised, a normally open one closes (public teaching pages)", SourceStatus.Published);

    /// <summary>15 % under to 5 % over the rated volts.</summary>
    public static Source CoilVolts { get; } = new("UFGS 15652A, 2.21.3: solenoid valves work from 15 % under to 5 % over their rated volts; to 10 % over with a caution (practice)", SourceStatus.Published);

    /// <summary>Highest inlet less lowest outlet pressure.</summary>
    public static Source OpeningDifferential { get; } = new("A valve opens against its largest opening differential and no more: 250 psi in and 50 psi out need 200 psi, found at 85 % of the volts with a hot coil (public teaching page)", SourceStatus.Published);

    /// <summary>Drop by the flow coefficient.</summary>
    public static Source Capacity { get; } = new("IEC 60534-2-1: liquid with choking, gas with the expansion factor; a pilot-operated valve needs its least drop to lift, and liquid must not flash before the expansion valve", SourceStatus.Published);

    /// <summary>A suction line's drop.</summary>
    public static Source SuctionDrop { get; } = new("A suction valve may cost the pressure of 2 °F (1.1 K) of saturation", SourceStatus.Practice);

    /// <summary>Working pressure at least the design pressure.</summary>
    public static Source WorkingPressure { get; } = new("A part's highest working pressure is at least the design pressure of its side (ASHRAE 15)", SourceStatus.Memory);

    /// <summary>Same size and joint, or fittings.</summary>
    public static Source Connections { get; } = new("Tube sizes by their outside diameter; another size takes reducers, another joint new ends", SourceStatus.Practice);

    /// <summary>One-way valves in reversing lines.</summary>
    public static Source BothWays { get; } = new("A one-way solenoid valve is lifted by pressure from behind", SourceStatus.Practice);

    /// <summary>The transformer's VA.</summary>
    public static Source CoilPower { get; } = new("A transformer carries the VA of its plate, all coils together", SourceStatus.Practice);

    /// <summary>Ignition sources beside refrigerants that burn.</summary>
    public static Source Flammable { get; } = new("ASHRAE 34 classes; parts beside an A2L or A3 refrigerant are listed for it (IEC 60335-2-40, -89)", SourceStatus.Memory);

    /// <summary>No least drop for a direct-acting valve.</summary>
    public static Source DirectActing { get; } = new("A direct-acting valve is lifted by its magnet alone, from no differential on", SourceStatus.Derived);

    /// <summary>Inlet and outlet of one size.</summary>
    public static Source SameBothSides { get; } = new("Where one size is given, both sides have it", SourceStatus.Practice);

    /// <summary>Direct current has no frequency.</summary>
    public static Source CoilFrequency { get; } = new("Only alternating current has a frequency", SourceStatus.Derived);

    /// <summary>The old valve's place.</summary>
    public static Source AsTheOld { get; } = new("What fitted the old valve is there for the new one", SourceStatus.Practice);

    /// <summary>Brazing near seals.</summary>
    public static Source Brazing { get; } = new("Valves are kept cool while they are brazed, and nitrogen flows through the pipe", SourceStatus.Practice);

    /// <summary>Who may open a refrigerant circuit.</summary>
    public static Source Certified { get; } = new("Refrigerant circuits are opened by certified people alone, and refrigerant is recovered (US Clean Air Act, section 608)", SourceStatus.Published);

    /// <summary>Refrigerant and charge of an expansion valve.</summary>
    public static Source SameCharge { get; } = new("An expansion valve's charge belongs to its refrigerant and range: the same, or another valve", SourceStatus.Practice);

    /// <summary>Capacity by the published rating.</summary>
    public static Source Rating { get; } = new("A published capacity goes with the root of drop and density and with the refrigerating effect (capacity with the root of the drop: public teaching page); 100 to 130 % of the load meets, to 90 and 150 % a check (practice)", SourceStatus.Published);

    /// <summary>Internal and external equalisers.</summary>
    public static Source Equaliser { get; } = new("UFGS 15652A, 2.21.4: internal equalisers only where the evaporator loses less than 2 °F (about 1 K) of saturation; a distributor loses more", SourceStatus.Published);

    /// <summary>The range of a charge.</summary>
    public static Source ChargeRange { get; } = new("A charge works in the range of evaporating temperatures that its maker gives", SourceStatus.Practice);

    /// <summary>A pressure limit over the design.</summary>
    public static Source PressureLimit { get; } = new("A pressure-limited charge limits the evaporating pressure: its bulb runs out of liquid (public teaching page); the limit lies 5 °F (2.8 K) over the design at least (practice)", SourceStatus.Published);

    /// <summary>Compressors of low starting torque.</summary>
    public static Source OffTimeEqualising { get; } = new("A compressor of low starting torque needs the pressures to come together while it is off: a bleed port", SourceStatus.Practice);

    /// <summary>The capillary's length.</summary>
    public static Source Capillary { get; } = new("A capillary reaches its bulb's place; what is too long is coiled up", SourceStatus.Practice);

    /// <summary>Arrangement of a condensing-pressure valve.</summary>
    public static Source HeadArrangement { get; } = new("Pipes are laid for one arrangement: a three-way valve, or an inlet regulator with its differential check valve", SourceStatus.Practice);

    /// <summary>Setting of a condensing-pressure valve.</summary>
    public static Source HeadSetting { get; } = new("A head-pressure setting within 10 psi of the old one does the same; lower only while the expansion valves still get their drop", SourceStatus.Practice);

    /// <summary>Capacity of a condensing-pressure valve.</summary>
    public static Source HeadCapacity { get; } = new("The capacity at the least ambient, at the conditions that it was given for, is at least the load", SourceStatus.Practice);

    /// <summary>Room for the flooding charge.</summary>
    public static Source FloodingCharge { get; } = new("A receiver holds the charge that floods the condenser in the cold", SourceStatus.Practice);
}
