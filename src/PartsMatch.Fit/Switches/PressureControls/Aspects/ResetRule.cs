using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.PressureControls.Aspects;

/// <summary>What the reset reads of a pressure control.</summary>
/// <param name="Reset">How it closes again; null when not known.</param>
public readonly record struct ResetFacet(ContactReset? Reset);

/// <summary>Does it reset as the old one did?</summary>
/// <remarks>A manual-reset high-pressure safety is never replaced by an automatic one; the reverse is a change. Elsewhere automatic for manual is a check.</remarks>
public sealed class ResetRule() : Aspect<PressureControlSpec, PressureControlSite, ResetFacet>("Reset", isDeciding: true, PressureControlSources.Reset, new(0.3, 0.8, 1))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["reset", "function"], []);

    /// <inheritdoc/>
    public override ResetFacet Read(PressureControlSpec part) => new(part.Reset);

    /// <inheritdoc/>
    public override Finding Judge(PressureControlNeed need, ResetFacet facet) => (need.Plate.Reset, facet.Reset, need.Plate.Function) switch
    {
        (null, _, _) => Finding.Unknown(Side.Plate, "reset", $"Whether the old one was reset by hand is not known."),
        (_, null, _) => Finding.Unknown(Side.Part, "reset", $"How this one resets is not known."),
        ({ } old, { } now, _) when old == now => Finding.Meets($"It resets as the old one did."),
        (ContactReset.Automatic, _, _) => Finding.MeetsWith([new(SwitchChanges.AcceptManualReset, $"tell whoever looks after it that it stays out until it is reset by hand")], $"It is reset by hand; the old one reset by itself."),
        (_, _, PressureFunction.HighPressure) => Finding.Fails($"The old one was a high-pressure safety reset by hand; this one resets by itself, and never takes its place."),
        (_, _, null) => Finding.Unknown(Side.Plate, "function", $"It resets by itself, the old one by hand: whether that was a high-pressure safety is not known."),
        _ => Finding.MeetsWith([new(SwitchChanges.CheckAutomaticReset, $"see whether it may start again by itself: the old one was reset by hand")], $"It resets by itself; the old one was reset by hand."),
    };
}
