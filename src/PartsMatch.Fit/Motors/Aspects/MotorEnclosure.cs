using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the enclosure reads of a motor.</summary>
/// <param name="IsEnclosed">Whether it keeps splashing water out; null when not known.</param>
/// <param name="ResistsJets">Whether it is marked against water jets, second IP digit 5 or more.</param>
/// <param name="Drains">Its drain holes; null when not known.</param>
public readonly record struct EnclosureFacet(bool? IsEnclosed, bool ResistsJets, DrainHoles? Drains);

/// <summary>Does the motor bear the water of its place?</summary>
/// <remarks>
/// Open machines are for dry places. Rain, wash-down and condensing cold need an enclosed one, or second IP digit 4 at least; where both are marked, both must do.
/// With the surroundings not known, a motor at least as enclosed as the old one meets, and an open one in place of an enclosed one is unknown: the old motor hints at water, but does not prove it.
/// </remarks>
public sealed class MotorEnclosure() : Aspect<MotorSpec, MotorSite, EnclosureFacet>("Enclosure", isDeciding: true, BodySources.Enclosure, new(0.5, 0.8, 1))
{
    /// <summary>Splashing water from all directions (IEC 60034-5 table 3).</summary>
    private const int Splashing = 4;

    /// <summary>Water jets (IEC 60034-5 table 3).</summary>
    private const int Jets = 5;

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["enclosure", "ipCode", "drainHoles"], ["surroundings", "shaftPosition"]);

    /// <inheritdoc/>
    public override EnclosureFacet Read(MotorSpec part) => new(IsEnclosed(part), part.IpCode?.Water >= Jets, part.DrainHoles);

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, EnclosureFacet facet) => need.Site.Surroundings switch
    {
        Surroundings.Dry => Finding.Meets($"The place is dry: any enclosure will do."),
        { } wet => InWater(need, facet, wet),
        null => facet.IsEnclosed switch
        {
            true => Finding.Meets($"It is enclosed: that suits dry places and wet ones.") with { CautionWords = HasDrains(facet) ? (FormattableString)$"Where it gets wet: {Drain(need, facet)}." : null, CautionAt = Stage.Mount },
            _ when IsEnclosed(need.Plate) == false => Finding.Meets($"The old motor was open too: this one is at least as enclosed."),
            false => Finding.Unknown(Side.Site, "surroundings", $"It is open, for dry places only."),
            null => Finding.Unknown(Side.Part, "enclosure", $"Whether it is enclosed is not known; an open motor is for dry places only."),
        },
    };

    private static Finding InWater(MotorNeed need, EnclosureFacet facet, Surroundings wet) => facet.IsEnclosed switch
    {
        null => Finding.Unknown(Side.Part, "enclosure", $"{Place(wet)} needs an enclosed motor, or second IP digit 4 at least; this one's enclosure is not known."),
        false => Finding.Fails($"{Place(wet)} needs an enclosed motor, or second IP digit 4 at least; this one is open or marked for less."),
        true => Finding.MeetsWith(HasDrains(facet) ? [new(BodyChanges.OpenLowestDrain, $"{Drain(need, facet)}")] : [], $"{Place(wet)} needs an enclosed motor, or second IP digit 4 at least, and this is one.") with
        {
            CautionWords = wet == Surroundings.WashDown && !facet.ResistsJets ? (FormattableString)$"It is not marked against water jets (second IP digit 5): do not aim the hose at it." : null,
        },
    };

    /// <summary>What enclosure and IP code say together; a low digit outweighs an enclosed name, and an open name a high digit.</summary>
    private static bool? IsEnclosed(MotorSpec motor)
    {
        var byName = motor.Enclosure is { } kind ? kind is not (Enclosure.OpenDripProof or Enclosure.OpenAirOver) : (bool?)null;
        var byCode = motor.IpCode is { } code ? code.Water >= Splashing : (bool?)null;
        return byName is null || byCode is null ? byName ?? byCode : byName.Value && byCode.Value;
    }

    private static bool HasDrains(EnclosureFacet facet) => facet.Drains is { } drains && drains != DrainHoles.None;

    private static string Drain(MotorNeed need, EnclosureFacet facet) => (need.Site.ShaftPosition, facet.Drains) switch
    {
        (ShaftPosition.Up, DrainHoles.ShaftEnd) or (ShaftPosition.Down, DrainHoles.LeadEnd) => "plug its drain hole, which ends up on top",
        (ShaftPosition.Up, _) => "open the drain hole at the lead end, which ends up lowest, and plug any other",
        (ShaftPosition.Down, _) => "open the drain hole at the shaft end, which ends up lowest, and plug any other",
        _ => "open the drain hole that ends up lowest, and plug the others",
    };

    private static string Place(Surroundings wet) => wet switch
    {
        Surroundings.Rain => "Rain",
        Surroundings.WashDown => "Wash-down",
        _ => "Condensing cold",
    };
}
