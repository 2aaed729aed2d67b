using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>What the contact action reads of a contactor.</summary>
/// <param name="Action">What its contacts do as it pulls in; null when not known.</param>
public readonly record struct ActionFacet(ContactAction? Action);

/// <summary>Do the contacts close, open or change over as the old ones did?</summary>
/// <remarks>The same or it fails; for change-over contacts, old or new, see <see cref="ActionRule{TAction}"/>, and for one of each kind <see cref="OneOfEach"/>.
/// Poles that do not say it are taken to close as the coil pulls in, as most do: the answer says so, and none fails by it. Not where the plate says something of it that was not taken.</remarks>
public sealed class ActionOfContacts() : Aspect<ContactorSpec, ContactorSite, ActionFacet>("Contact action", isDeciding: true, ContactorSources.ContactAction, new(0.3, 0.4, 1))
{
    /// <summary>The rule for all contacts, as contactors speak of it.</summary>
    private static ActionRule<ContactAction> Rule { get; } = new("contactAction", ContactAction.ChangeOver, side => $"the {new Spelt<ContactAction>(side)} side");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["contactAction"], ["sidesWired"]) { Besides = ["poleCount", "linesSwitched"] };

    /// <inheritdoc/>
    public override ActionFacet Read(ContactorSpec part) => new(part.ContactAction);

    /// <inheritdoc/>
    public override Finding Judge(ContactorNeed need, ActionFacet facet)
    {
        var old = Old(need);
        if (old.Marked == ContactAction.OneOfEach) return OneOfEach.InItsPlace(old.Wired, facet.Action);
        return facet.Action == ContactAction.OneOfEach ? Rule.Misread(old) ?? ByOneOfEach(old, need.Site.LinesSwitched) : Rule.Judge(old, facet.Action);
    }

    /// <summary>What of the place cannot be beside the old one's contacts; of one of each kind either or both may be wired.</summary>
    internal static IEnumerable<Contradiction> Disagreement(ContactorSpec plate, ContactorSite site) =>
        plate.ContactAction == ContactAction.OneOfEach ? [] : Rule.Disagreement(plate.ContactAction, site.WiredAction, ContactorSources.ContactAction);

    private static Finding ByOneOfEach(OldAction<ContactAction> old, int? lines) =>
        old is { Marked: null, Wired: { } wired } ? AsItMayBe(OneOfEach.ByIt(wired, isWired: true, lines))
        : (old.Wired ?? old.Marked) is { } known ? OneOfEach.ByIt(known, old.Wired is not null, lines)
        : old.Taken is { } taken ? Rule.Resting(OneOfEach.ByIt(taken, isWired: false, lines), taken, old)
        : Rule.Unmarked;

    /// <summary>An old one that is not marked may have one of each as well, and in the place of such a one another so made never fails.</summary>
    private static Finding AsItMayBe(Finding byIt) => byIt.Verdict != Verdict.Fails ? byIt
        : Finding.Unknown(Side.Plate, "contactAction", $"It has one normally open and one normally closed pole, which does only if the old one was made so as well; what the old contacts do is not marked.") with { Shortfall = byIt.Shortfall, Margin = byIt.Margin };

    /// <summary>What is known of an old one's contacts.</summary>
    private static OldAction<ContactAction> Old(ContactorNeed need) => new(need.Plate.ContactAction, need.Site.WiredAction, need.Plate.PoleCount is null || need.Doubts("contactAction") ? null : ContactAction.NormallyOpen, $"a contactor's pole");
}
