using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.SolenoidValves.Aspects;

/// <summary>Does the transformer carry the coil that goes in?</summary>
/// <remarks>By what it has left: see <see cref="CoilTransformer"/>. Where the volts there ask for another coil of its body, that one's VA count.</remarks>
public sealed class CoilPower() : Aspect<SolenoidValveSpec, SolenoidValveSite, CoilPowerFacet>("Coil's power", isDeciding: false, CoilSources.Transformer, new(0.3, 0.4, 0.3))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["coilPower", "furtherCoils"], ["transformerLeft", "coilSupplyVolts"]) { Besides = ["coilVolts", "coilFrequency", "coilCurrent", "coilSupplyFrequency", "coilSupplyCurrent"] };

    /// <inheritdoc/>
    public override CoilPowerFacet Read(SolenoidValveSpec part) => CoilPowerFacet.Of(part.CoilPower, part.CoilVolts, part.CoilCurrent, part.CoilFrequency, part.FurtherCoils);

    /// <inheritdoc/>
    public override Finding Judge(SolenoidNeed need, CoilPowerFacet facet)
    {
        var supply = SolenoidCoils.Supply(need);
        var transformer = new CoilTransformer(Rounded.Voltamperes(need.Site.TransformerLeft), IsLeft: true, "transformerLeft");
        return CoilGoingIn.Judge(facet, supply, SolenoidCoils.Window, SolenoidCoils.Names, (coil, va) => transformer.Carries(coil, va, Rounded.Voltamperes(need.Plate.CoilPower), supply));
    }
}
