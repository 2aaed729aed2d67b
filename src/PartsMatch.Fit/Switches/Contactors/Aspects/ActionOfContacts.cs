using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>What the contact action reads of a contactor.</summary>
/// <param name="Action">What its contacts do as it pulls in; null when not known.</param>
public readonly record struct ActionFacet(ContactAction? Action);

/// <summary>Do the contacts close, open or change over as the old ones did?</summary>
/// <remarks>Change-over contacts do either with one side left unused: a change. Closing for opening fails. For old change-over contacts a single one may do, where only its side is wired: open until that is known.
/// Poles that do not say it are taken to close as the coil pulls in, as most do: the answer says so, and none fails by it.</remarks>
public sealed class ActionOfContacts() : Aspect<ContactorSpec, ContactorSite, ActionFacet>("Contact action", isDeciding: true, ContactorSources.ContactAction, new(0.3, 0.4, 1))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["contactAction"], []) { Besides = ["poleCount"] };

    /// <inheritdoc/>
    public override ActionFacet Read(ContactorSpec part) => new(part.ContactAction);

    /// <inheritdoc/>
    public override Finding Judge(ContactorNeed need, ActionFacet facet)
    {
        if (need.Plate.ContactAction is { } marked) return Against(marked, facet);
        return need.Plate.PoleCount is null
            ? Finding.Unknown(Side.Plate, "contactAction", $"Whether contacts that close or that open are needed is not known.")
            : Against(ContactAction.NormallyOpen, facet).RestingOn("contactAction", $"What the old ones do is not marked: {new Spelt<ContactAction>(ContactAction.NormallyOpen)} is taken, as most poles are.");
    }

    private static Finding Against(ContactAction wanted, ActionFacet facet) => (wanted, facet.Action) switch
    {
        (var old, null) => Finding.Unknown(Side.Part, "contactAction", $"The old contacts were {new Spelt<ContactAction>(old)}; this one's are not known."),
        (var old, { } action) when old == action => Finding.Meets($"Its contacts are {new Spelt<ContactAction>(action)}, as the old ones were."),
        (var old, ContactAction.ChangeOver) => Finding.MeetsWith([new(SwitchChanges.UseOneSide, $"use the {new Spelt<ContactAction>(old)} side of its contacts, and leave the other unused")], $"Its contacts change over; the old ones were {new Spelt<ContactAction>(old)}."),
        (ContactAction.ChangeOver, { } action) => Finding.Unknown(Side.Plate, "contactAction", $"The old contacts change over, and this one's are {new Spelt<ContactAction>(action)}; which side of the old ones is wired is not known. Where it is one alone, give what that side does."),
        (var old, { } action) => Finding.Fails($"Its contacts are {new Spelt<ContactAction>(action)}; the old ones were {new Spelt<ContactAction>(old)}."),
    };
}
