using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>What the action reads of a thermostat.</summary>
/// <param name="Action">What its contacts do; null when not known.</param>
/// <param name="HasThreeWires">Whether it is a fan delay and a defrost end in one: the side that ends the defrost closes on rise, the fans' side opens.</param>
public readonly record struct ThermostatActionFacet(ThermostatAction? Action, bool HasThreeWires);

/// <summary>Do its contacts open or close on rise as the old ones did?</summary>
/// <remarks>The same or it fails. Change-over contacts do either with one side unused: a change. Of three wires each side moves at temperatures of its own, so that the one that opens on rise is the fans' and ends no defrost. For old change-over contacts a single one does where only its side is wired.
/// Where an old one opens and closes tells as well. One that tells neither is taken to do what one of its function mostly does: the answer says so, and none fails by it.</remarks>
public sealed class ContactsDo() : Aspect<ThermostatSpec, ThermostatSite, ThermostatActionFacet>("Action", isDeciding: true, ThermostatSources.Action, new(0.3, 0.5, 1))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["action"], ["sidesWired"]) { Besides = ["function", "cutOut", "cutIn"] };

    /// <inheritdoc/>
    public override ThermostatActionFacet Read(ThermostatSpec part) => new(part.Action, part.Function == ThermostatFunction.FanDelayAndDefrostEnd);

    /// <inheritdoc/>
    public override Finding Judge(ThermostatNeed need, ThermostatActionFacet facet)
    {
        if ((need.Plate.Action ?? TakenOfTheOldOne.ByTemperatures(need.Plate.Function, need.Plate.CutOut, need.Plate.CutIn)) is { } known) return Against(need, known, facet);
        return TakenOfTheOldOne.ActionOf(need.Plate.Function) is { } taken
            ? Against(need, taken, facet).RestingOn("action", $"What the old ones do is not marked: {new Spelt<ThermostatAction>(taken)} is taken, as a {new Spelt<ThermostatFunction>(need.Plate.Function!.Value)} mostly does.")
            : Finding.Unknown(Side.Plate, "action", $"Whether the old contacts opened or closed on rise is not known.");
    }

    private static Finding Against(ThermostatNeed need, ThermostatAction wanted, ThermostatActionFacet facet) => (wanted, facet.Action) switch
    {
        (var old, null) => Finding.Unknown(Side.Part, "action", $"The old contacts: {new Spelt<ThermostatAction>(old)}; what this one's do is not known."),
        (var old, { } now) when old == now => Finding.Meets($"Its contacts do as the old ones did: {new Spelt<ThermostatAction>(now)}."),
        (ThermostatAction.OpensOnRise, ThermostatAction.ChangeOver) when facet.HasThreeWires && need.Plate.Function == ThermostatFunction.DefrostEnd =>
            Finding.Fails($"The old contacts ended the defrost by opening on rise; of its three wires the side that opens on rise is the fans', and the one that ends the defrost closes."),
        (var old, ThermostatAction.ChangeOver) => Finding.MeetsWith([new(SwitchChanges.UseOneSide, $"use the side that {new Spelt<ThermostatAction>(old)}, and leave the other unused")], $"Its contacts change over; the old ones: {new Spelt<ThermostatAction>(old)}."),
        (ThermostatAction.ChangeOver, { } now) => ForOneSide(need.Site.SidesWired, now),
        (var old, { } now) => Finding.Fails($"The old contacts: {new Spelt<ThermostatAction>(old)}; this one's: {new Spelt<ThermostatAction>(now)}."),
    };

    private static Finding ForOneSide(SidesWired? wired, ThermostatAction now) => wired switch
    {
        null => Finding.Unknown(Side.Site, "sidesWired", $"The old contacts changed over, this one's: {new Spelt<ThermostatAction>(now)}; which sides are wired is not known."),
        SidesWired.OpensOnRise when now == ThermostatAction.OpensOnRise => Finding.Meets($"Only the side that opens on rise is wired, and so do its contacts."),
        SidesWired.ClosesOnRise when now == ThermostatAction.ClosesOnRise => Finding.Meets($"Only the side that closes on rise is wired, and so do its contacts."),
        SidesWired.Both => Finding.Fails($"Both sides of the old change-over contacts are wired; this one has only contacts that do this: {new Spelt<ThermostatAction>(now)}."),
        _ => Finding.Fails($"The side of the old contacts that is wired does otherwise than this one's contacts: {new Spelt<ThermostatAction>(now)}."),
    };
}
