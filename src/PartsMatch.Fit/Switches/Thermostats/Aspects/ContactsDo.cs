using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>What the action reads of a thermostat.</summary>
/// <param name="Action">What its contacts do; null when not known.</param>
/// <param name="HasThreeWires">Whether it is a fan delay and a defrost end in one: the side that ends the defrost closes on rise, the fans' side opens.</param>
public readonly record struct ThermostatActionFacet(ThermostatAction? Action, bool HasThreeWires);

/// <summary>Do its contacts open or close on rise as the old ones did?</summary>
/// <remarks>The same or it fails; for change-over contacts, old or new, see <see cref="ActionRule{TAction}"/>. Of three wires each side moves at temperatures of its own, so that the one that opens on rise is the fans' and ends no defrost.
/// One that does not say it is taken to do what its temperatures tell, or what one of its function mostly does: the answer says so, and none fails by it.</remarks>
public sealed class ContactsDo() : Aspect<ThermostatSpec, ThermostatSite, ThermostatActionFacet>("Action", isDeciding: true, ThermostatSources.Action, new(0.3, 0.5, 1))
{
    /// <summary>The rule for all contacts, as thermostats speak of it.</summary>
    internal static ActionRule<ThermostatAction> Rule { get; } = new("action", ThermostatAction.ChangeOver, side => $"the side that {new Spelt<ThermostatAction>(side)}");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["action"], ["sidesWired"]) { Besides = ["function", "cutOut", "cutIn"] };

    /// <inheritdoc/>
    public override ThermostatActionFacet Read(ThermostatSpec part) => new(part.Action, part.Function == ThermostatFunction.FanDelayAndDefrostEnd);

    /// <inheritdoc/>
    public override Finding Judge(ThermostatNeed need, ThermostatActionFacet facet)
    {
        var old = Old(need.Plate, need.Site);
        if (!facet.HasThreeWires || need.Plate.Function != ThermostatFunction.DefrostEnd || (old.Wired ?? old.Marked ?? old.Taken) != ThermostatAction.OpensOnRise) return Rule.Judge(old, facet.Action);
        var found = Finding.Fails($"The old contacts ended the defrost by opening on rise; of its three wires the side that opens on rise is the fans', and the one that ends the defrost closes.");
        return (old.Wired ?? old.Marked) is null ? found.RestingOn("action", $"What the old ones do is not marked: their temperatures tell.") : found;
    }

    /// <summary>What is known of an old one's contacts.</summary>
    internal static OldAction<ThermostatAction> Old(ThermostatSpec plate, ThermostatSite site) => new(plate.Action, site.Wired, TakenOfTheOldOne.Action(plate.Function, plate.CutOut, plate.CutIn), Because(plate));

    private static FormattableString? Because(ThermostatSpec plate) => plate.Function switch
    {
        null => null,
        { } function when TakenOfTheOldOne.ByTemperatures(plate.Function, plate.CutOut, plate.CutIn) is not null => $"a {new Spelt<ThermostatFunction>(function)} of such temperatures",
        { } function => $"a {new Spelt<ThermostatFunction>(function)}",
    };
}
