using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>What the terminals read of a thermostat.</summary>
/// <param name="Ends">How its wires go on; null when not known.</param>
public readonly record struct ThermostatEndsFacet(ThermostatEnds? Ends);

/// <summary>Do the wires go on as they end now?</summary>
/// <remarks>The same meets; else they are ended anew: a change.</remarks>
public sealed class TerminalsOfThermostat() : Aspect<ThermostatSpec, ThermostatSite, ThermostatEndsFacet>("Terminals", isDeciding: false, ThermostatSources.Terminals, new(0.2, 0.5, 0.3))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["terminals"], []);

    /// <inheritdoc/>
    public override ThermostatEndsFacet Read(ThermostatSpec part) => new(part.Terminals);

    /// <inheritdoc/>
    public override Finding Judge(ThermostatNeed need, ThermostatEndsFacet facet) => (need.Plate.Terminals, facet.Ends) switch
    {
        (null, _) => Finding.Unknown(Side.Plate, "terminals", $"How the wires end there is not known."),
        ({ } old, null) => Finding.Unknown(Side.Part, "terminals", $"The old one had {new Spelt<ThermostatEnds>(old)}; this one's terminals are not known."),
        ({ } old, { } now) when old == now => Finding.Meets($"It has {new Spelt<ThermostatEnds>(now)}, as the old one had."),
        ({ } old, { } now) => Finding.MeetsWith(
            [new(SwitchChanges.FitTerminals, $"end the wires for {new Spelt<ThermostatEnds>(now)}") { Kit = [new($"{(now == ThermostatEnds.Leads ? "wire connector" : $"wire end for {new Spelt<ThermostatEnds>(now)}")}", Wires(need))] }],
            $"It has {new Spelt<ThermostatEnds>(now)}; the old one had {new Spelt<ThermostatEnds>(old)}."),
    };

    private static int Wires(ThermostatNeed need) => need.Plate.Action == ThermostatAction.ChangeOver && need.Site.SidesWired is null or SidesWired.Both ? 3 : 2 * (need.Plate.Poles ?? 1);
}
