using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.SolenoidValves;

/// <summary>A solenoid valve's coil, and what feeds it.</summary>
internal static class SolenoidCoils
{
    /// <summary>85 to 105 % of the marked volts, to 110 % with a caution (UFGS 15652A, 2.21.3; practice over 105 %).</summary>
    public static CoilWindow Window { get; } = new(0.85, 1.05, 1.10);

    /// <summary>Where it stands, and what is changed about it.</summary>
    public static CoilNames Names { get; } = new("coil", "coilVolts", "coilFrequency", "coilSupplyVolts", "coilSupplyFrequency") { PartCurrent = "coilCurrent", SiteCurrent = "coilSupplyCurrent", PartVa = "coilPower", PartFurther = "furtherCoils", Change = SolenoidValveChanges.ChangeCoil, Connect = SolenoidValveChanges.ConnectCoil };

    /// <summary>What feeds it: what was measured, or else all that the old one was marked for.</summary>
    public static CoilSupply Supply(SolenoidNeed need) => need.Once(static need => new Remembered(new(Rounded.Volts(need.Site.CoilSupplyVolts), Rounded.Hertz(need.Site.CoilSupplyFrequency), need.Site.CoilSupplyCurrent, CoilFacet.Of(need.Plate.CoilVolts, need.Plate.CoilCurrent, need.Plate.CoilFrequency, null).Own))).Supply;

    private sealed record Remembered(CoilSupply Supply);
}
