using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What rotation reads of a motor.</summary>
/// <param name="Ships">The turn as it leaves the box, facing the shaft; null when not known, or when no end is named.</param>
/// <param name="Reversing">How it is turned round.</param>
/// <param name="IsThreePhase">Whether two lines are changed over rather than two leads.</param>
/// <param name="HasTwoShafts">Whether a shaft comes out at both ends.</param>
public readonly record struct TurnFacet(Direction? Ships, Reversing? Reversing, bool IsThreePhase, bool HasTwoShafts)
{
    /// <summary>Whether the turn can be changed; null when not known.</summary>
    public bool? CanReverse => Reversing is { } known ? known != Motors.Reversing.Fixed : null;

    /// <summary>What it is for a motor: a shaded-pole motor is fixed, a three-phase one reversible, unless its entry says otherwise.</summary>
    public static TurnFacet Of(MotorSpec motor) => new(
        motor.Rotation?.FacingShaft,
        motor.Reversing ?? motor.Type switch
        {
            MotorType.ShadedPole => Motors.Reversing.Fixed,
            MotorType.ThreePhaseInduction => Motors.Reversing.ByLeads,
            _ => null,
        },
        motor.Phase == Phases.Three || motor.Type == MotorType.ThreePhaseInduction,
        motor.ShaftEnds == 2);
}

/// <summary>Does the motor turn the way the fan needs, or can it be made to?</summary>
/// <remarks>
/// All turns are compared facing the shaft end; a turn that names no end is unknown. Fixed the wrong way fails, reversible is a change at most.
/// A shaded-pole motor is fixed and a three-phase one reversible unless its entry says otherwise.
/// </remarks>
public sealed class Rotation() : Aspect<MotorSpec, MotorSite, TurnFacet>("Rotation", isDeciding: true, BodySources.Rotation, new(0.5, 1, 1))
{
    private static readonly FormattableString TwoShafts =
        $"The two shaft ends turn opposite ways: the turn is meant facing the end that drives the fan.";

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["rotation", "reversing"], ["turnNeeded"]) { Besides = ["fanKind"] };

    /// <inheritdoc/>
    public override TurnFacet Read(MotorSpec part) => TurnFacet.Of(part);

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, TurnFacet facet)
    {
        if (Needed(need) is not { } turn) return WhateverIsNeeded(need, facet);
        if (facet.Ships == turn)
        {
            return Finding.Meets($"It turns {Seen(turn)}, as the fan needs.") with { CautionWords = facet.HasTwoShafts ? TwoShafts : null, CautionAt = Stage.Mount };
        }

        return (facet.CanReverse, facet.Ships) switch
        {
            (true, { }) => Set(need, new(BodyChanges.Reverse, $"{How(facet)}, so that it turns {Seen(turn)}"), $"It ships turning {Seen(Turn.Opposite(turn))} and can be reversed; the fan needs {Seen(turn)}."),
            (true, null) => Set(need, new(BodyChanges.SeeTurn, $"see which way it turns as it ships: it must turn {Seen(turn)}; if not, {How(facet)}"), $"It can be set to turn either way; the fan needs {Seen(turn)}."),
            (false, { }) => Finding.Fails($"It turns {Seen(Turn.Opposite(turn))} and cannot be reversed; the fan needs {Seen(turn)}."),
            (null, { }) => Finding.Unknown(Side.Part, "reversing", $"It turns {Seen(Turn.Opposite(turn))}, the fan needs {Seen(turn)}, and whether it can be reversed is not known."),
            (_, null) => Finding.Unknown(Side.Part, "rotation", $"The fan needs {Seen(turn)}; which way this motor turns, and seen from which end, is not known."),
        };
    }

    /// <summary>The turn that the fan needs, facing the shaft. What was said of the site stands, even where it names no end: the plate does not silently take its place.</summary>
    internal static Direction? Needed(MotorNeed need) => (need.Site.TurnNeeded ?? need.Plate.Rotation)?.FacingShaft;

    private static Finding WhateverIsNeeded(MotorNeed need, TurnFacet facet)
    {
        if (facet.CanReverse == true)
        {
            return Set(need, new(BodyChanges.SeeTurn, $"see which way the blade turns, then set it: {How(facet)} if it turns the wrong way"), $"It can be set to turn either way, whichever the fan needs.");
        }

        return need.Site.TurnNeeded is not null
            ? Finding.Unknown(Side.Site, "turnNeeded", $"The turn needed does not say from which end it is seen, and the two ends name it opposite ways.")
            : Finding.Unknown(Side.Plate, "rotation", $"Which way the fan must turn, and seen from which end, is not known.");
    }

    /// <summary>A turn that was set is proved after the start, and not by the air alone.</summary>
    private static Finding Set(MotorNeed need, Change change, Reason sentence) => Finding.MeetsWith([change], sentence) with
    {
        CautionWords = need.Site.FanKind switch
        {
            FanKind.Propeller => $"A propeller that turns backwards blows the wrong way, and little; turning it round on its hub does not reverse the air. Let it stand still before it starts: one that windmills may start backwards.",
            FanKind.BlowerWheel => $"A blower wheel that turns backwards still blows the right way, but less: the air's direction proves nothing, look at the wheel.",
            _ => null,
        },
    };

    private static string How(TurnFacet facet) => facet.Reversing switch
    {
        Reversing.ByPlug => "turn its reversing plug round",
        Reversing.BySetting => "change its setting of rotation",
        _ => facet.IsThreePhase ? "interchange any two of its three lines" : "change its two reversing leads over",
    };

    internal static string Seen(Direction turn) => turn == Direction.Clockwise ? "clockwise facing the shaft" : "counterclockwise facing the shaft";
}
