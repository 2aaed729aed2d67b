using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the body's length reads of a motor.</summary>
/// <param name="Millimetres">The shell without the shaft; null when not known.</param>
public readonly record struct BodyLengthFacet(double? Millimetres);

/// <summary>Is there room for the body's length?</summary>
/// <remarks>Longer than the room fails. With the room not known, a body more than 1/4 in longer than the old one is a check. The shaft's length and the body's diameter are questions of their own.</remarks>
public sealed class BodyLength() : Aspect<MotorSpec, MotorSite, BodyLengthFacet>("Length", isDeciding: false, PlaceSources.BodyLength, new(0.3, 1, 0.4))
{
    /// <summary>1/4 in, in mm (practice).</summary>
    private const double Step = 6.35;

    /// <summary>One inch longer than the old body is a shortfall of 1, in mm (practice).</summary>
    private const double MuchLonger = 25.4;

    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a body", "longer than the old one", 0, MuchLonger, "mm");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["bodyLength"], ["bodyRoom"]);

    /// <inheritdoc/>
    public override BodyLengthFacet Read(MotorSpec part) => new(Rounded.Millimetres(part.BodyLength));

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, BodyLengthFacet facet)
    {
        var (room, old) = need.Once(static need => (Rounded.Millimetres(need.Site.BodyRoom), Rounded.Millimetres(need.Plate.BodyLength)));
        return Judge(facet.Millimetres, room, old);
    }

    private static Finding Judge(double? length, double? room, double? old) => (length, room, old) switch
    {
        (null, { } most, _) => Finding.Unknown(Side.Part, "bodyLength", $"There is room for a body of {new Shown(most)}; how long this one is, is not known."),
        ({ } known, { } most, _) => InRoom(known, most),
        (null, null, { } before) => Finding.Unknown(Side.Part, "bodyLength", $"The old body was {new Shown(before)} long; how long this one is, is not known."),
        ({ } known, null, { } before) => AgainstOld(known, before),
        ({ } known, null, null) => Finding.Meets($"Its body is {new Shown(known)} long; neither the room there nor the old body's length is given.") with { CautionWords = $"Hold its body of {new Shown(known)} against the room there before the old one comes off.", CautionAt = Stage.NoteWhatIsThere },
        (null, null, null) => Finding.Meets($"Neither the room there nor the length of any body is given."),
    };

    private static Finding InRoom(double length, double room)
    {
        var margin = new Margin(room - length, "mm");
        return Within.AtMost(length, room)
            ? Finding.Meets($"Its body of {new Shown(length)} goes into the room of {new Shown(room)}.") with { Margin = margin }
            : Finding.Fails($"Its body of {new Shown(length)} is longer than the room of {new Shown(room)}.") with { Margin = margin };
    }

    private static Finding AgainstOld(double length, double old)
    {
        var longer = Rounded.To(length - old, 2);
        Change[] changes = Within.AtMost(longer, Step) ? [] : [new(PlaceChanges.CheckBodyLength, $"see that there is room for a body of {new Shown(length)}; the old one had {new Shown(old)}")];
        return Finding.MeetsWith(changes, $"Its body is {new Shown(length)} long, the old one's was {new Shown(old)}; up to 1/4 in more goes where that went.") with
        {
            Shortfall = Math.Clamp(longer / MuchLonger, 0, 1),
            Margin = new(Rounded.To(Step - longer, 2), "mm"),
        };
    }
}
