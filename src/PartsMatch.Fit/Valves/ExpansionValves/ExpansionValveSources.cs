using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Valves.ExpansionValves;

/// <summary>Where the rules for expansion valves come from.</summary>
public static class ExpansionValveSources
{
    /// <summary>The refrigerant that a charge belongs to; copper alloys and ammonia.</summary>
    public static Source SameRefrigerant { get; } = new("An expansion valve's bulb has the pressures of its refrigerant: the same, or another valve; ammonia attacks copper and its alloys", SourceStatus.Practice);

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
    public static Source OffTimeEqualising { get; } = new("A compressor of low starting torque needs the pressures to come together while it is off: by a bleed port, or a charge or passage that lets them do so quickly", SourceStatus.Practice);

    /// <summary>The bulb's place.</summary>
    public static Source BulbInPlace { get; } = new("A bulb lies along straight suction pipe, or fills its well: over 1/16 in of play is filled with paste", SourceStatus.Practice);

    /// <summary>The capillary's length.</summary>
    public static Source Capillary { get; } = new("A capillary reaches its bulb's place; what is too long is coiled up", SourceStatus.Practice);
}
