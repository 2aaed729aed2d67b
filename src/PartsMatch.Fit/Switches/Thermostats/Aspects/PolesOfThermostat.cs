using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>What poles read of a thermostat.</summary>
/// <param name="Count">Its poles; null when not known.</param>
public readonly record struct ThermostatPolesFacet(int? Count);

/// <summary>Has the thermostat as many poles as the old one?</summary>
/// <remarks>More are left unused; fewer fail.</remarks>
public sealed class PolesOfThermostat() : Aspect<ThermostatSpec, ThermostatSite, ThermostatPolesFacet>("Poles", isDeciding: true, ThermostatSources.Poles, new(0.3, 0.5, 0.8))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["poles"], []);

    /// <inheritdoc/>
    public override ThermostatPolesFacet Read(ThermostatSpec part) => new(part.Poles);

    /// <inheritdoc/>
    public override Finding Judge(ThermostatNeed need, ThermostatPolesFacet facet) => (need.Plate.Poles, facet.Count) switch
    {
        (null, _) => Finding.Unknown(Side.Plate, "poles", $"How many poles the old one had is not known."),
        ({ } old, null) => Finding.Unknown(Side.Part, "poles", $"The old one had {old}; this one's poles are not known."),
        ({ } old, { } count) when count >= old => Finding.Meets($"It has {count} of the {old} poles of the old one.") with { Shortfall = count > old ? 0.5 : 0 },
        ({ } old, { } count) => Finding.Fails(new Margin(count - old, "poles"), $"It has {count} of the {old} poles of the old one."),
    };
}
