using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.PressureControls.Aspects;

/// <summary>What the action reads of a pressure control.</summary>
/// <param name="Action">What its contacts do; null when not known.</param>
public readonly record struct PressureActionFacet(PressureAction? Action);

/// <summary>Do its contacts open on rise or on fall as the old ones did?</summary>
/// <remarks>The same or it fails; for change-over contacts, old or new, see <see cref="ActionRule{TAction}"/>.
/// An old one that does not say it is taken to have contacts for its function alone: the answer says so, and none fails by it.</remarks>
public sealed class ContactsDo() : Aspect<PressureControlSpec, PressureControlSite, PressureActionFacet>("Action", isDeciding: true, PressureControlSources.Action, new(0.3, 0.4, 1))
{
    /// <summary>The rule for all contacts, as pressure controls speak of it.</summary>
    internal static ActionRule<PressureAction> Rule { get; } = new("action", PressureAction.ChangeOver, side => $"the side that {new Spelt<PressureAction>(side)}");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["action"], ["sidesWired"]) { Besides = ["function"] };

    /// <inheritdoc/>
    public override PressureActionFacet Read(PressureControlSpec part) => new(part.Action);

    /// <inheritdoc/>
    public override Finding Judge(PressureControlNeed need, PressureActionFacet facet) => Rule.Judge(Old(need.Plate, need.Site), facet.Action);

    /// <summary>What is known of an old one's contacts.</summary>
    internal static OldAction<PressureAction> Old(PressureControlSpec plate, PressureControlSite site) => new(plate.Action, site.Wired, plate.Running, plate.Function is { } function ? (FormattableString)$"one for {new Spelt<PressureFunction>(function)}" : null);
}
