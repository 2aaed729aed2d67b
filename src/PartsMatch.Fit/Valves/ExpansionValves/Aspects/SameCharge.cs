using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.ExpansionValves.Aspects;

/// <summary>What is read of a valve's charge.</summary>
/// <param name="Charge">What its bulb is filled with; null where not given.</param>
public readonly record struct ChargeFacet(BulbCharge? Charge);

/// <summary>Has the bulb the charge that is needed?</summary>
/// <remarks>The same, else it fails.</remarks>
public sealed class SameCharge() : Aspect<ExpansionValveSpec, ExpansionValveSite, ChargeFacet>("Charge", isDeciding: true, ExpansionValveSources.SameCharge, new(0.3, 0.5, 1.5))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["charge"], ["needsCharge"]);

    /// <inheritdoc/>
    public override ChargeFacet Read(ExpansionValveSpec part) => new(part.Charge);

    /// <inheritdoc/>
    public override Finding Judge(ExpansionNeed need, ChargeFacet facet) => (need.Site.NeedsCharge, facet.Charge) switch
    {
        (_, null) => Finding.Unknown(Side.Part, "charge", $"What its bulb is filled with is not given."),
        (null, { } has) => Finding.Unknown(Side.Site, "needsCharge", $"It has a {new Spelt<BulbCharge>(has)}; which is needed there is not known."),
        ({ } needs, { } has) when needs == has => Finding.Meets($"It has a {new Spelt<BulbCharge>(has)}, as is needed."),
        ({ } needs, { } has) => Finding.Fails($"It has a {new Spelt<BulbCharge>(has)}; a {new Spelt<BulbCharge>(needs)} is needed."),
    };
}
