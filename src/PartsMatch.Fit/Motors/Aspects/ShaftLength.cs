using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the shaft's length reads of a motor; mm, null where not known.</summary>
/// <param name="Length">From the end bell to the tip.</param>
/// <param name="CanBeCut">Whether it may be shortened.</param>
/// <param name="Flat">Length of its flat from the tip; null when it has none, or when that is not known.</param>
/// <param name="HasFlat">Whether it has one flat or two.</param>
public readonly record struct LengthFacet(double? Length, bool? CanBeCut, double? Flat, bool HasFlat);

/// <summary>Does the shaft reach the fan's place, and clear what is in front of it?</summary>
/// <remarks>
/// Shorter than what was measured as needed fails. Where nobody measured, the old shaft less 1/4 in is needed: a blade is set back so far, which is checked. Longer than the room is cut, where it may be, with enough of the flat left for the set screw. Room for less than is needed fails every shaft.
/// Longer than the old shaft with the room not known is unknown, unless it may be cut.
/// </remarks>
public sealed class ShaftLength() : Aspect<MotorSpec, MotorSite, LengthFacet>("Shaft length", isDeciding: true, BodySources.ShaftLength, new(0.6, 1, 1))
{
    /// <summary>One step of MG 1's shaft lengths, 1/4 in, in mm.</summary>
    private const double Step = BodyDeductions.ShaftStepMillimetres;

    /// <summary>The least flat that a hub's set screw sits on, 1/2 in, in mm (practice).</summary>
    private const double LeastFlat = 12.7;

    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a shaft", "shorter than the old one", 0, Step, "mm");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["shaftLength", "shaftCanBeCut", "flatLength"], ["shaftLengthNeeded", "shaftRoom"]);

    /// <inheritdoc/>
    public override LengthFacet Read(MotorSpec part)
    {
        var hasFlat = part.ShaftForm is ShaftForm.Flat or ShaftForm.DoubleFlat;
        return new(Rounded.Millimetres(part.ShaftLength), part.ShaftCanBeCut, hasFlat ? Rounded.Millimetres(part.FlatLength) : null, hasFlat);
    }

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, LengthFacet facet)
    {
        var (needed, room, old) = need.Once(static need => new Asked(
            Rounded.Millimetres(need.Site.ShaftLengthNeeded ?? BodyDeductions.LeastShaft(need.Plate.ShaftLength)),
            Rounded.Millimetres(need.Site.ShaftRoom),
            Rounded.Millimetres(need.Plate.ShaftLength)));
        if (facet.Length is not { } length)
        {
            return needed is null && room is null ? NeedUnknown() : Finding.Unknown(Side.Part, "shaftLength", $"How long the motor's shaft is, is not known.");
        }

        if (needed is { } reach && !Within.AtLeast(length, reach))
        {
            return Finding.Fails(new Margin(length - reach, "mm"), $"Its shaft of {new Shown(length)} is shorter than the {new Shown(reach)} needed.");
        }

        if (room is { } most && !Within.AtMost(length, most) && facet.CanBeCut == false)
        {
            return Finding.Fails(new Margin(most - length, "mm"), $"Its shaft of {new Shown(length)} is longer than the room of {new Shown(most)} and cannot be cut.");
        }

        if (needed is { } more && room is { } less && !Within.AtMost(more, less))
        {
            return Finding.Fails(new Margin(less - length, "mm"), $"Its shaft of {new Shown(length)} reaches, but the room measured, {new Shown(less)}, is less than the {new Shown(more)} needed: no shaft does both. One of the two is not so.");
        }

        return needed is { } least ? Reaching(facet, length, least, room, old) : NeedUnknown();
    }

    /// <summary>The answer for a shaft that reaches: is it too long?</summary>
    private static Finding Reaching(LengthFacet facet, double length, double least, double? room, double? old)
    {
        // The old shaft had room; what lies beyond it nobody measured, so one step more than the old shaft is taken to clear.
        var clear = room ?? (old is { } there ? there + Step : null);
        var cutTo = room ?? old;
        if (clear is { } most && Within.AtMost(length, most))
        {
            // Only where the need was taken from the old shaft; what was measured as needed is enough.
            var shorter = old is { } before && Math.Abs(before - Step - least) < 0.02 ? Math.Max(0, before - length) : 0;
            Change[] changes = shorter > 0 ? [new(BodyChanges.SetBladeBack, $"see that the blade comes to its old depth: the shaft is {new Shown(Rounded.To(shorter, 2))} shorter than the old one")] : [];
            return Finding.MeetsWith(changes, $"Its shaft is {new Shown(length)} long: {new Shown(least)} is needed, {new Shown(most)} is the most.") with
            {
                Shortfall = Math.Min(1, shorter / Step),
                Margin = new(Math.Min(length - least, most - length), "mm"),
            };
        }

        if (cutTo is { } target && facet.CanBeCut == true) return Cut(facet, length, target);
        if (room is not null && facet.CanBeCut is null) return Finding.Unknown(Side.Part, "shaftCanBeCut", $"Its shaft of {new Shown(length)} is longer than the room of {new Shown(room.Value)}; whether it may be cut is not known.");
        if (cutTo is null && facet.CanBeCut == true)
        {
            return Finding.MeetsWith([new(BodyChanges.CheckShaftRoom, $"see that a shaft of {new Shown(length)} clears the guard; it may be cut, to {new Shown(least)} at the shortest")], $"Its shaft of {new Shown(length)} reaches the {new Shown(least)} needed, and may be cut if it is too long.");
        }

        return Finding.Unknown(Side.Site, "shaftRoom", $"Its shaft of {new Shown(length)} reaches the {new Shown(least)} needed; whether it clears what is in front is not known: measure the room.");
    }

    private static Finding Cut(LengthFacet facet, double length, double target)
    {
        List<Change> changes = [new(BodyChanges.CutShaft, $"cut the shaft from {new Shown(length)} to {new Shown(target)}") { Kit = [new($"hacksaw and file")] }];
        if (facet.HasFlat && !(facet.Flat is { } flat && Within.AtLeast(flat - (length - target), LeastFlat)))
        {
            changes.Add(new(BodyChanges.FileFlat, $"see that at least 1/2 in of the flat is left under the set screw, else file it on") { Kit = [new($"flat file")] });
        }

        return Finding.MeetsWith(changes, $"Its shaft of {new Shown(length)} is too long for {new Shown(target)}, and may be cut.");
    }

    private static Finding NeedUnknown() => Finding.Unknown(Side.Plate, "shaftLength", $"How long a shaft the fan needs, or the old one was, is not known.");

    /// <summary>What is asked of a shaft; mm, null where not known.</summary>
    private sealed record Asked(double? Needed, double? Room, double? Old);
}
