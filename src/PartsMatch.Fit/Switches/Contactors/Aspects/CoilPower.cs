using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>What the coil's power reads of a contactor.</summary>
/// <param name="Va">Holding VA; null when not known.</param>
public readonly record struct CoilPowerFacet(double? Va);

/// <summary>Has the control transformer the VA left that the coil takes?</summary>
/// <remarks>Its own VA less all other coils' on it, the edge included. Where those are not known, a coil that takes no more than the old one meets.</remarks>
public sealed class CoilPower() : Aspect<ContactorSpec, ContactorSite, CoilPowerFacet>("Power of the coil", isDeciding: false, ContactorSources.CoilVa, new(0.4, 0.5, 0.5))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["coilVa"], ["transformerVa", "otherCoilsVa"]);

    /// <inheritdoc/>
    public override CoilPowerFacet Read(ContactorSpec part) => new(Va(part.CoilVa));

    /// <inheritdoc/>
    public override Finding Judge(ContactorNeed need, CoilPowerFacet facet)
    {
        var (transformer, others, old) = (Va(need.Site.TransformerVa), Va(need.Site.OtherCoilsVa), Va(need.Plate.CoilVa));
        if (facet.Va is not { } va) return Finding.Unknown(Side.Part, "coilVa", $"What its coil takes is not known.");
        if (transformer is { } gives)
        {
            var left = gives - (others ?? 0);
            if (!Within.AtMost(va, left)) return Finding.Fails(new Margin(left - va, "VA"), $"Its coil takes {va} VA; the transformer of {gives} VA has {left} VA left.");
            if (others is not null) return Finding.Meets($"Its coil takes {va} VA; the transformer of {gives} VA has {left} VA left.") with { Margin = new(left - va, "VA"), Shortfall = va / left };
        }

        if (old is { } took && Within.AtMost(va, took)) return Finding.Meets($"Its coil takes {va} VA, the old one took {took} VA.") with { Margin = new(took - va, "VA") };
        return transformer is null
            ? Finding.Unknown(Side.Site, "transformerVa", $"Its coil takes {va} VA{new Before(old)}; what the transformer has left is not known.")
            : Finding.Unknown(Side.Site, "otherCoilsVa", $"Its coil takes {va} VA{new Before(old)}; what else hangs on the transformer of {transformer} VA is not known.");
    }

    private static double? Va(UnitsNet.ElectricApparentPower? power) => power is { } known ? Rounded.To(known.Voltamperes, 1) : null;

    private readonly record struct Before(double? Va)
    {
        public override string ToString() => Va is { } took ? FormattableString.Invariant($", the old one took {took:0.#} VA") : string.Empty;
    }
}
