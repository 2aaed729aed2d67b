using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Valves.CondensingPressureValves;

/// <summary>Where the limits of readings come from of condensing-pressure valves.</summary>
public static class CondensingPressureValveReadingSources
{
    /// <summary>What a condensing-pressure valve does at a head.</summary>
    public static Source HeadHeld { get; } = new("A condensing-pressure valve lets hot gas by below its setting and none 20 psi (138 kPa) above it; 10 psi (69 kPa) under it, it does not hold; one that may be set is set anew before it is condemned", SourceStatus.Practice);

    /// <summary>What an inlet regulator does at a pressure before it.</summary>
    public static Source RegulatorHeld { get; } = new("An inlet regulator holds the pressure before it, at the condenser: 10 psi (69 kPa) under its setting it does not hold, and 20 psi (138 kPa) above it, it is wide open and takes at most 10 psi (69 kPa)", SourceStatus.Practice);

    /// <summary>What a differential check valve does at a difference.</summary>
    public static Source HeadDifference { get; } = new("A differential check valve lets hot gas by above the difference that opens it and none below, told by a gauge before it and one at the receiver; within 5 psi (34 kPa) of it either is right; one that may be set is set anew before it is condemned", SourceStatus.Practice);

    /// <summary>Charge to flood with.</summary>
    public static Source HeadCharge { get; } = new("Without enough refrigerant no valve floods a condenser", SourceStatus.Practice);
}
