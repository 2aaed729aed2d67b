using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>What is read of a thermostat's common contact.</summary>
/// <param name="ChangesOver">Whether its contacts change over; null when not known.</param>
/// <param name="Common">How the common one is marked; null when not known.</param>
public readonly record struct CommonFacet(bool? ChangesOver, CommonMark? Common);

/// <summary>Is it known onto what the common wire goes?</summary>
/// <remarks>Marked as the old one meets; marked otherwise is a change. Contacts that only open or close have none.</remarks>
public sealed class CommonOfContacts() : Aspect<ThermostatSpec, ThermostatSite, CommonFacet>("Common", isDeciding: false, ThermostatSources.Common, new(0.2, 0.5, 0.3))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["common"], []) { Besides = ["action"] };

    /// <inheritdoc/>
    public override CommonFacet Read(ThermostatSpec part) => new(part.Action is { } action ? action == ThermostatAction.ChangeOver : null, part.Common);

    /// <inheritdoc/>
    public override Finding Judge(ThermostatNeed need, CommonFacet facet) => (need.Plate.Common, facet) switch
    {
        (_, { ChangesOver: false }) => Finding.Meets($"Its contacts only open or close: none of its two wires is common to others."),
        (_, { ChangesOver: null }) => Finding.Unknown(Side.Part, "action", $"Whether its contacts change over is not known."),
        (_, { Common: null }) => Finding.Unknown(Side.Part, "common", $"Its contacts change over; which terminal is common is not known."),
        ({ } old, { Common: { } now }) when old == now => Finding.Meets($"The common one is marked as on the old one: {new Spelt<CommonMark>(now)}."),
        (var old, { Common: { } now }) => Finding.MeetsWith([new(ThermostatChanges.MapCommon, $"put the common wire onto {new Spelt<CommonMark>(now)}{new WhereItWas(old)}")], $"Its common one is {new Spelt<CommonMark>(now)}{new WhereItWas(old)}."),
    };

    private readonly record struct WhereItWas(CommonMark? Old)
    {
        public override string ToString() => Old is { } old ? $"; on the old one it was {new Spelt<CommonMark>(old)}" : string.Empty;
    }
}
