using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>Does the blade go with the motor: one that stays by its hand, a new one by its number and pitch?</summary>
/// <remarks>
/// Bore and depth are judged with the shaft, and the power of a new diameter with the fan's load. A blade that stays and is made for the turn that the motor cannot take fails on a direct drive.
/// The fan laws hold for blades of one design: another number of blades or pitch is proved by the amps.
/// </remarks>
public sealed class Blade() : Aspect<MotorSpec, MotorSite, TurnFacet>("Blade", isDeciding: false, PlaceSources.Blade, new(0.3, 0.6, 0.2))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["rotation", "reversing"], ["bladeHand", "turnNeeded", "bladeStays"]) { Besides = ["drive", "bladeDiameter", "bladePitch", "blades", "newBladeBore", "newBladeDiameter"] };

    /// <inheritdoc/>
    public override TurnFacet Read(MotorSpec part) => TurnFacet.Of(part);

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, TurnFacet facet) => need.Site switch
    {
        { Drive: Drive.Belt } => Finding.Meets($"A belt drives the fan: no blade sits on the motor."),
        { BladeStays: false } site => Goes(site),
        { BladeHand.FacingShaft: { } hand } => Stays(need, facet, hand),
        _ => Finding.Meets($"The blade stays, and is taken to be made for the fan's turn: its hand is not given."),
    };

    private static Finding Goes(MotorSite site)
    {
        var blades = site.Blades is { } count ? FormattableString.Invariant($"{count} blades") : "as many blades";
        var pitch = site.BladePitch is { } angle ? $"a pitch of {QuantityForms.Angle.Write(angle)}" : "the same pitch";
        var turn = site.TurnNeeded?.FacingShaft is { } needed ? $", made to turn {Rotation.Seen(needed)}" : string.Empty;
        var size = Rounded.Millimetres(site.NewBladeDiameter ?? site.BladeDiameter) is { } wide ? $", {new Shown(wide)}" : string.Empty;
        var bore = Rounded.Millimetres(site.NewBladeBore) is { } hub ? $", {new Shown(hub)} bore" : string.Empty;
        return Finding.MeetsWith(
            [new(PlaceChanges.CheckBladePower, $"see by the amps that the new blade is not too much for the motor: choose one like the old, with {blades} and {pitch}{turn}") { Kit = [new($"blade{size}{bore}")] }],
            $"A new blade comes on. The fan load allows for its diameter, not for another number or pitch of its blades: the amps will tell.");
    }

    private static Finding Stays(MotorNeed need, TurnFacet facet, Direction hand) => (facet.Ships, facet.CanReverse) switch
    {
        var (ships, reversible) when ships == hand || reversible == true => Finding.Meets($"The blade is made to turn {Rotation.Seen(hand)}, and the motor can turn that way.") with { CautionWords = Against(need, hand), CautionAt = Stage.NoteWhatIsThere },
        (null, _) => Finding.Unknown(Side.Part, "rotation", $"The blade is made to turn {Rotation.Seen(hand)}; which way this motor turns, and seen from which end, is not known."),
        (_, null) => Finding.Unknown(Side.Part, "reversing", $"The blade is made to turn {Rotation.Seen(hand)}, the motor turns the other way, and whether it can be reversed is not known."),
        _ when need.Site.Drive is null => Finding.Unknown(Side.Site, "drive", $"The blade is made to turn {Rotation.Seen(hand)}, and the motor cannot: whether it sits on the motor's shaft is not known."),
        _ => Finding.Fails($"The blade that stays is made to turn {Rotation.Seen(hand)}, and the motor turns only the other way."),
    };

    /// <summary>A hand and a needed turn that disagree: one of them was read wrongly.</summary>
    private static FormattableString? Against(MotorNeed need, Direction hand) => need.Site.TurnNeeded?.FacingShaft is { } needed && needed != hand
        ? (FormattableString)$"The blade is marked for {Rotation.Seen(hand)}, and the fan is said to need {Rotation.Seen(needed)}: see which is right before the turn is set."
        : null;
}
