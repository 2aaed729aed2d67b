using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Valves.SolenoidValves.Aspects;

/// <summary>Does its coil, or another one for its body, suit the volts and frequency there?</summary>
/// <remarks>85 to 105 % of the marked volts, to 110 % with a caution, edges included; one for two voltages is connected for one: a change.</remarks>
public sealed class CoilSupplied() : Aspect<SolenoidValveSpec, SolenoidValveSite, CoilFacet>("Coil", isDeciding: true, SolenoidValveSources.CoilVolts, new(0.8, 0.8, 1.5))
{
    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = CoilOnSupply.Measure(SolenoidCoils.Window, SolenoidCoils.Names);

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["coilVolts", "coilFrequency", "furtherCoils"], ["coilSupplyVolts", "coilSupplyFrequency", "coilSupplyCurrent"]) { Besides = ["coilCurrent"] };

    /// <inheritdoc/>
    public override CoilFacet Read(SolenoidValveSpec part) => CoilFacet.Of(part.CoilVolts, part.CoilCurrent, part.CoilFrequency, part.FurtherCoils);

    /// <inheritdoc/>
    public override Finding Judge(SolenoidNeed need, CoilFacet facet) => CoilOnSupply.Judge(facet, SolenoidCoils.Supply(need), SolenoidCoils.Window, SolenoidCoils.Names);
}
