using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.PressureControls.Aspects;

/// <summary>What the action reads of a pressure control.</summary>
/// <param name="Action">What its contacts do; null when not known.</param>
public readonly record struct PressureActionFacet(PressureAction? Action);

/// <summary>Do its contacts open on rise or on fall as the old ones did?</summary>
/// <remarks>Change-over contacts do either with one side unused: a change. For old change-over contacts a single one may do, where only its side is wired: open until that is known. Else the same or it fails.
/// An old one that does not say it is taken to have contacts for its function alone: the answer says so, and none fails by it.</remarks>
public sealed class ContactsDo() : Aspect<PressureControlSpec, PressureControlSite, PressureActionFacet>("Action", isDeciding: true, PressureControlSources.Action, new(0.3, 0.4, 1))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["action"], []) { Besides = ["function"] };

    /// <inheritdoc/>
    public override PressureActionFacet Read(PressureControlSpec part) => new(part.Action);

    /// <inheritdoc/>
    public override Finding Judge(PressureControlNeed need, PressureActionFacet facet)
    {
        if (need.Plate.Action is { } marked) return Against(marked, facet);
        return need.Plate.Running is { } taken
            ? Against(taken, facet).RestingOn("action", $"What the old ones do is not marked: {new Spelt<PressureAction>(taken)} is taken, as one for {new Spelt<PressureFunction>(need.Plate.Function!.Value)} mostly does.")
            : Finding.Unknown(Side.Plate, "action", $"Whether the old contacts opened on rise or on fall is not known.");
    }

    private static Finding Against(PressureAction wanted, PressureActionFacet facet) => (wanted, facet.Action) switch
    {
        (var old, null) => Finding.Unknown(Side.Part, "action", $"The old one {new Spelt<PressureAction>(old)}; what this one does is not known."),
        (var old, { } now) when old == now => Finding.Meets($"Its contacts do as the old ones did: {new Spelt<PressureAction>(now)}."),
        (var old, PressureAction.ChangeOver) => Finding.MeetsWith([new(SwitchChanges.UseOneSide, $"use the side that {new Spelt<PressureAction>(old)}, and leave the other unused")], $"Its contacts change over; the old one {new Spelt<PressureAction>(old)}."),
        (PressureAction.ChangeOver, { } now) => Finding.Unknown(Side.Plate, "action", $"The old contacts change over, this one {new Spelt<PressureAction>(now)}; which side of the old ones is wired is not known. Where it is one alone, give what that side does."),
        (var old, { } now) => Finding.Fails($"The old contacts: {new Spelt<PressureAction>(old)}; this one's: {new Spelt<PressureAction>(now)}."),
    };
}
