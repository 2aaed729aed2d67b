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
/// Where an old one opens and closes tells as well. One that tells neither is taken to do what one of its function mostly does: the answer says so, and none fails by it.</remarks>
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
        return facet.HasThreeWires && need.Plate.Function == ThermostatFunction.DefrostEnd && (old.Wired ?? old.Marked) == ThermostatAction.OpensOnRise
            ? Finding.Fails($"The old contacts ended the defrost by opening on rise; of its three wires the side that opens on rise is the fans', and the one that ends the defrost closes.")
            : Rule.Judge(old, facet.Action);
    }

    /// <summary>What is known of an old one's contacts.</summary>
    internal static OldAction<ThermostatAction> Old(ThermostatSpec plate, ThermostatSite site) => new(
        plate.Action ?? TakenOfTheOldOne.ByTemperatures(plate.Function, plate.CutOut, plate.CutIn),
        site.Wired,
        TakenOfTheOldOne.ActionOf(plate.Function),
        plate.Function is { } function ? (FormattableString)$"a {new Spelt<ThermostatFunction>(function)}" : null);
}
