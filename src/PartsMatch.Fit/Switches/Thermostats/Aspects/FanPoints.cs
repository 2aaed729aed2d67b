using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>Do the fans' contacts of a switch with three wires move where they are to?</summary>
/// <remarks>Where they close, so that the fans start, as the switching temperature is judged, and where they open likewise, where it is known of the old one: the start decides, and a timer mostly stops the fans. Only of old ones with three wires.</remarks>
public sealed class FanPoints() : Aspect<ThermostatSpec, ThermostatSite, TemperaturesFacet>("Fans' temperatures", isDeciding: true, ThermostatSources.Temperatures, new(2, 0.8, 1))
{
    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = TemperatureRule.Measure;

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["fanCutIn", "fanCutOut"], ["fanCutInNeeded", "fanCutOutNeeded"]) { Besides = ["function"] };

    /// <inheritdoc/>
    public override TemperaturesFacet Read(ThermostatSpec part) => new(default, Points.Of(ThermostatAction.OpensOnRise, part.FanCutOut, part.FanCutIn), null, null, IsAdjustable: false, HasThreeWires: false, IsManual: false);

    /// <inheritdoc/>
    public override Finding Judge(ThermostatNeed need, TemperaturesFacet facet)
    {
        var wanted = WantedPoints.Of(need);
        if (wanted.Function is null) return Finding.Unknown(Side.Plate, "function", $"Whether the old one had contacts for the fans besides is not known.");
        if (!wanted.HasThreeWires) return Finding.Meets($"The old one had no contacts for the fans besides.");
        if (wanted.Fans.OnFall is not { } starts) return Finding.Unknown(Side.Site, "fanCutInNeeded", $"At which temperature the fans are to start is not known.");
        var start = TemperatureRule.Against(starts, facet.Fans.OnFall, facet, Moving.OnFall, "fanCutIn", "The fans' contacts");
        if (wanted.Fans.OnRise is not { } stops) return start;
        return start.OrWorse(TemperatureRule.Against(stops, facet.Fans.OnRise, facet, Moving.OnRise, "fanCutOut", "The fans' contacts"));
    }
}
