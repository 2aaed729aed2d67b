using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the shaft's form reads of a motor.</summary>
/// <param name="Form">Round, flat, double flat or keyway; null when not known.</param>
public readonly record struct FormFacet(ShaftForm? Form);

/// <summary>Does the shaft offer the hub's set screw or key what it holds on to?</summary>
/// <remarks>
/// A key needs a keyway: anything else fails. A set screw needs a flat, and a missing one can be filed: a change. A double flat serves a flat. A hub for a round shaft takes any (practice).
/// Where the blade goes its hub goes with it, and the new one's counts.
/// </remarks>
public sealed class ShaftToHub() : Aspect<MotorSpec, MotorSite, FormFacet>("Shaft form", isDeciding: true, BodySources.ShaftForm, new(0.5, 1, 0.8))
{
    private static readonly KitItem FlatFile = new($"flat file");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["shaftForm"], ["hubHoldsOn"]) { Besides = ["bladeStays", "newHubHoldsOn"] };

    /// <inheritdoc/>
    public override FormFacet Read(MotorSpec part) => new(part.ShaftForm);

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, FormFacet facet) => (HeldBy(need), facet.Form) switch
    {
        (null, _) when need.Site.BladeStays == false => Finding.Unknown(Side.Site, "newHubHoldsOn", $"The old blade goes, and the shaft must suit the new one's hub."),
        (ShaftForm.Round, ShaftForm.Keyway) => Finding.Meets($"The hub holds on to a round shaft; a keyway does no harm.") with { CautionWords = $"Turn the hub so that its set screw does not sit on the edge of the keyway.", CautionAt = Stage.Mount },
        (ShaftForm.Round, _) => Finding.Meets($"The hub holds on to a round shaft, and takes any."),
        ({ } hub, { } shaft) when hub == shaft => Finding.Meets($"The hub holds on to {Offered(shaft)}, which the shaft has."),
        (ShaftForm.Flat, ShaftForm.DoubleFlat) => Finding.Meets($"The hub's set screw needs one flat; the shaft has two."),
        (ShaftForm.Keyway, { } shaft) => Finding.Fails($"The hub is held by a key and needs a keyway; the shaft {Has(shaft)}."),
        (ShaftForm.Keyway, null) => Finding.Unknown(Side.Part, "shaftForm", $"The hub is held by a key; whether the shaft has a keyway is not known."),
        (ShaftForm.DoubleFlat, ShaftForm.Flat) => Finding.MeetsWith([new(BodyChanges.FileFlat, $"file a second flat under the second set screw") { Kit = [FlatFile] }], $"The hub has set screws on two flats; the shaft has one."),
        ({ } hub, { } shaft) => Finding.MeetsWith([new(BodyChanges.FileFlat, $"file {Offered(hub)} under the set screw") { Kit = [FlatFile] }], $"The hub's set screw sits on {Offered(hub)}; the shaft {Has(shaft)}."),
        ({ } hub, null) => Finding.MeetsWith([new(BodyChanges.CheckHub, $"see whether the shaft has {Offered(hub)} for the set screw; file it if not") { Kit = [FlatFile] }], $"The hub's set screw sits on {Offered(hub)}; the shaft's form is not known, and a flat can be filed."),
        (null, ShaftForm.Keyway) => Finding.MeetsWith([new(BodyChanges.CheckHub, $"see what the hub holds on to: a key sits in the keyway, a set screw needs a flat filed") { Kit = [FlatFile] }], $"What the hub holds on to is not known; a shaft with a keyway serves any hub, with a flat filed if need be."),
        _ => Finding.Unknown(Side.Plate, "shaftForm", $"What the hub holds on to, or the old shaft's form, is not known; a key would need a keyway."),
    };

    /// <summary>What the hub that is to sit on the shaft holds on to; null when not known.</summary>
    internal static ShaftForm? HeldBy(MotorNeed need) => need.Site.BladeStays == false ? need.Site.NewHubHoldsOn : need.Site.HubHoldsOn ?? need.Plate.ShaftForm;

    private static string Has(ShaftForm form) => form == ShaftForm.Round ? "is round" : $"has {Offered(form)}";

    private static string Offered(ShaftForm form) => form switch
    {
        ShaftForm.Flat => "a flat",
        ShaftForm.DoubleFlat => "two flats",
        ShaftForm.Keyway => "a keyway",
        _ => "a round shaft",
    };
}
