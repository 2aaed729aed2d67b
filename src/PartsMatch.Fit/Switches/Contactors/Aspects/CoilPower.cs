using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>Has the control transformer the VA left that the coil takes which goes in?</summary>
/// <remarks>Its own VA less all other coils' on it: see <see cref="CoilTransformer"/>. Where the control circuit's volts ask for another coil of its body, that one's VA count.</remarks>
public sealed class CoilPower() : Aspect<ContactorSpec, ContactorSite, CoilPowerFacet>("Power of the coil", isDeciding: false, CoilSources.Transformer, new(0.4, 0.5, 0.5))
{
    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a coil that takes", "of the VA that its transformer has left", 0, 100, "%");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["coilVa", "furtherCoils"], ["transformerVa", "otherCoilsVa"]) { Besides = ["coilVolts", "coilFrequency", "coilCurrent", "controlVolts", "controlFrequency", "controlCurrent"] };

    /// <inheritdoc/>
    public override CoilPowerFacet Read(ContactorSpec part) => CoilPowerFacet.Of(part.CoilVa, part.CoilVolts, part.CoilCurrent, part.CoilFrequency, part.FurtherCoils);

    /// <inheritdoc/>
    public override Finding Judge(ContactorNeed need, CoilPowerFacet facet)
    {
        var (supply, transformer) = (ContactorCoils.Supply(need), Transformer(need.Site));
        return CoilGoingIn.Judge(facet, supply, ContactorCoils.Window, ContactorCoils.Names, (coil, va) => transformer.Carries(coil, va, Rounded.Voltamperes(need.Plate.CoilVa), supply));
    }

    private static CoilTransformer Transformer(ContactorSite site) => (Rounded.Voltamperes(site.TransformerVa), Rounded.Voltamperes(site.OtherCoilsVa)) switch
    {
        ({ } gives, { } others) => new(gives - others, IsLeft: true, "transformerVa"),
        (var gives, _) => new(gives, IsLeft: false, gives is null ? "transformerVa" : "otherCoilsVa"),
    };
}
