using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>What the bulb reads of a thermostat.</summary>
/// <param name="Bulb">Its form; null when not known.</param>
public readonly record struct BulbFacet(BulbForm? Bulb);

/// <summary>Does it feel where the old one felt?</summary>
/// <remarks>The same form meets. A straight bulb for a coiled one, a clipped disc for a strapped one, and the reverse, are held anew: a change. A bulb for a disc, and the reverse, is a check. An averaging capillary stands for nothing else, and nothing else for it.</remarks>
public sealed class FormOfBulb() : Aspect<ThermostatSpec, ThermostatSite, BulbFacet>("Bulb", isDeciding: false, ThermostatSources.Bulb, new(0.3, 0.6, 0.4))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["bulb"], []);

    /// <inheritdoc/>
    public override BulbFacet Read(ThermostatSpec part) => new(part.Bulb);

    /// <inheritdoc/>
    public override Finding Judge(ThermostatNeed need, BulbFacet facet) => (need.Plate.Bulb, facet.Bulb) switch
    {
        (null, _) => Finding.Unknown(Side.Plate, "bulb", $"What the old one felt with is not known."),
        ({ } old, null) => Finding.Unknown(Side.Part, "bulb", $"The old one had this: {new Spelt<BulbForm>(old)}; what this one feels with is not known."),
        ({ } old, { } now) when old == now => Finding.Meets($"It has this: {new Spelt<BulbForm>(now)}, as the old one had."),
        (BulbForm.Averaging, { } now) => Finding.Fails($"The old one felt along an averaging capillary; this one has this: {new Spelt<BulbForm>(now)}."),
        ({ } old, BulbForm.Averaging) => Finding.Fails($"It feels along an averaging capillary; the old one had this: {new Spelt<BulbForm>(old)}."),
        ({ } old, { } now) when IsDisc(old) == IsDisc(now) => Finding.MeetsWith(
            [new(ThermostatChanges.MountBulb, $"hold the {new Spelt<BulbForm>(now)} where the {new Spelt<BulbForm>(old)} was") { Kit = [new($"{Holder(now)}")] }],
            $"It has this: {new Spelt<BulbForm>(now)}; the old one had this: {new Spelt<BulbForm>(old)}."),
        ({ } old, { } now) => Finding.MeetsWith(
            [new(ThermostatChanges.CheckBulbPlace, $"check where the {new Spelt<BulbForm>(now)} can feel what the {new Spelt<BulbForm>(old)} felt") { Kit = [new($"{Holder(now)}")] }],
            $"It has this: {new Spelt<BulbForm>(now)}; the old one had this: {new Spelt<BulbForm>(old)}."),
    };

    /// <summary>Whether it is a disc.</summary>
    internal static bool IsDisc(BulbForm? form) => form is BulbForm.StrapOnDisc or BulbForm.ClipOnDisc;

    /// <summary>Whether it has no bulb of its own: a disc, or a capillary that feels along all its length.</summary>
    internal static bool HasNoBulb(BulbForm? form) => IsDisc(form) || form == BulbForm.Averaging;

    private static string Holder(BulbForm form) => form switch
    {
        BulbForm.StrapOnDisc => "strap for a disc thermostat",
        BulbForm.ClipOnDisc => "tube clip for a disc thermostat",
        BulbForm.Coiled => "holder for a coiled bulb",
        _ => "clamp for a bulb",
    };
}
