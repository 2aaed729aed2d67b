using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>What poles read of a thermostat.</summary>
/// <param name="Count">Its poles; null when not known.</param>
public readonly record struct ThermostatPolesFacet(int? Count);

/// <summary>Has the thermostat as many poles as the old one?</summary>
/// <remarks>More are left unused; fewer fail, and none has fewer than one. An old one that does not say it is taken for one with a single pole, and the answer says so.</remarks>
public sealed class PolesOfThermostat() : Aspect<ThermostatSpec, ThermostatSite, ThermostatPolesFacet>("Poles", isDeciding: true, ThermostatSources.Poles, new(0.3, 0.5, 0.8))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["poles"], []) { Besides = ["function"] };

    /// <inheritdoc/>
    public override ThermostatPolesFacet Read(ThermostatSpec part) => new(part.Poles);

    /// <inheritdoc/>
    public override Finding Judge(ThermostatNeed need, ThermostatPolesFacet facet)
    {
        if (need.Plate.Poles is { } marked) return Against(marked, facet);
        return TakenOfTheOldOne.Poles(need.Plate.Function) is { } taken
            ? Against(taken, facet).RestingOn("poles", $"The old one's are not marked: one is taken, as most have no more.")
            : Finding.Unknown(Side.Plate, "poles", $"How many poles the old one had is not known.");
    }

    private static Finding Against(int had, ThermostatPolesFacet facet) => (had, facet.Count) switch
    {
        (1, null) => Finding.Meets($"The old one had one pole, and none has fewer."),
        (var old, null) => Finding.Unknown(Side.Part, "poles", $"The old one had {old}; this one's poles are not known."),
        (var old, { } count) when count >= old => Finding.Meets($"The old one had {new PoleWords(old)}, it has {count}.") with { Shortfall = count > old ? 0.5 : 0 },
        (var old, { } count) => Finding.Fails(new Margin(count - old, "poles"), $"The old one had {new PoleWords(old)}, it has {count}."),
    };
}
