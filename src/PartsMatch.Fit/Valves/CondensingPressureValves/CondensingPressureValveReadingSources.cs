using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Valves.CondensingPressureValves;

/// <summary>Where the limits of readings come from of condensing-pressure valves.</summary>
public static class CondensingPressureValveReadingSources
{
    /// <summary>What a condensing-pressure valve does at a head.</summary>
    public static Source HeadHeld { get; } = new("A condensing-pressure valve lets hot gas by below its setting and none 20 psi (138 kPa) above it; 10 psi (69 kPa) under it, it does not hold", SourceStatus.Practice);

    /// <summary>Charge to flood with.</summary>
    public static Source HeadCharge { get; } = new("Without enough refrigerant no valve floods a condenser", SourceStatus.Practice);
}
