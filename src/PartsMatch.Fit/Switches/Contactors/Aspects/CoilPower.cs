using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>Has the control transformer the VA left that the coil takes which goes in?</summary>
/// <remarks>
/// Its own VA less all other coils' on it, the edge included. Where those are not known, a coil that takes no more than the old one meets.
/// Where the control circuit's volts ask for another coil of its body, that one's VA count.
/// </remarks>
public sealed class CoilPower() : Aspect<ContactorSpec, ContactorSite, CoilPowerFacet>("Power of the coil", isDeciding: false, ContactorSources.CoilVa, new(0.4, 0.5, 0.5))
{
    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a coil that takes", "of the VA that its transformer has left", 0, 100, "%");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["coilVa", "furtherCoils"], ["transformerVa", "otherCoilsVa"]) { Besides = ["coilVolts", "coilFrequency", "coilCurrent", "controlVolts", "controlFrequency", "controlCurrent"] };

    /// <inheritdoc/>
    public override CoilPowerFacet Read(ContactorSpec part) => CoilPowerFacet.Of(part.CoilVa, part.CoilVolts, part.CoilCurrent, part.CoilFrequency, part.FurtherCoils);

    /// <inheritdoc/>
    public override Finding Judge(ContactorNeed need, CoilPowerFacet facet) =>
        CoilGoingIn.Judge(facet, ContactorCoils.Supply(need), ContactorCoils.Window, ContactorCoils.Names, (coil, va) => Takes(need, coil, va));

    private static Finding Takes(ContactorNeed need, CoilName coil, double va)
    {
        var (transformer, others, old) = (Rounded.Voltamperes(need.Site.TransformerVa), Rounded.Voltamperes(need.Site.OtherCoilsVa), Rounded.Voltamperes(need.Plate.CoilVa));
        if (transformer is { } gives)
        {
            var left = gives - (others ?? 0);
            if (!Within.AtMost(va, left)) return Finding.Fails(new Margin(left - va, "VA"), $"{coil} takes {va} VA; the transformer of {gives} VA has {left} VA left.");
            if (others is not null) return Finding.Meets($"{coil} takes {va} VA; the transformer of {gives} VA has {left} VA left.") with { Margin = new(left - va, "VA"), Shortfall = va / left };
        }

        if (old is { } took && Within.AtMost(va, took)) return Finding.Meets($"{coil} takes {va} VA, the old one took {took} VA.") with { Margin = new(took - va, "VA") };
        return transformer is null
            ? Finding.Unknown(Side.Site, "transformerVa", $"{coil} takes {va} VA{new Before(old)}; what the transformer has left is not known.")
            : Finding.Unknown(Side.Site, "otherCoilsVa", $"{coil} takes {va} VA{new Before(old)}; what else hangs on the transformer of {transformer} VA is not known.");
    }

    private readonly record struct Before(double? Va)
    {
        public override string ToString() => Va is { } took ? FormattableString.Invariant($", the old one took {took:0.#} VA") : string.Empty;
    }
}
