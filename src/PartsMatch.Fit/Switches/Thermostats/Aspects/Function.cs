using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>What the function reads of a thermostat.</summary>
/// <param name="Function">Its function; null when not known.</param>
public readonly record struct ThermostatFunctionFacet(ThermostatFunction? Function);

/// <summary>Is the thermostat made for the same function?</summary>
/// <remarks>The same or it fails; a switch with three wires does for a fan delay or a defrost end alone, whose side of it is used.</remarks>
public sealed class Function() : Aspect<ThermostatSpec, ThermostatSite, ThermostatFunctionFacet>("Function", isDeciding: true, ThermostatSources.Function, new(0.5, 0.5, 1.5))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["function"], []);

    /// <inheritdoc/>
    public override ThermostatFunctionFacet Read(ThermostatSpec part) => new(part.Function);

    /// <inheritdoc/>
    public override Finding Judge(ThermostatNeed need, ThermostatFunctionFacet facet) => (need.Plate.Function, facet.Function) switch
    {
        (null, _) => Finding.Unknown(Side.Plate, "function", $"What the old one was there for is not known."),
        ({ } old, null) => Finding.Unknown(Side.Part, "function", $"The old one was a {new Spelt<ThermostatFunction>(old)}; what this one is for is not known."),
        ({ } old, { } now) when old == now => Finding.Meets($"It is a {new Spelt<ThermostatFunction>(now)}, as the old one was."),
        (ThermostatFunction.FanDelay or ThermostatFunction.DefrostEnd, ThermostatFunction.FanDelayAndDefrostEnd) =>
            Finding.Meets($"It is a fan delay and a defrost end with three wires; the old one was a {new Spelt<ThermostatFunction>(need.Plate.Function!.Value)} alone.") with { Shortfall = 0.5 },
        ({ } old, { } now) => Finding.Fails($"It is a {new Spelt<ThermostatFunction>(now)}; the old one was a {new Spelt<ThermostatFunction>(old)}."),
    };
}
