using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.SolenoidValves.Aspects;

/// <summary>What is read of a valve's state.</summary>
/// <param name="State">How it stands without power; null where not given.</param>
public readonly record struct StateFacet(NormalState? State);

/// <summary>Does the valve stand as it has to while its coil has no power?</summary>
/// <remarks>The same or not at all: no change turns the one into the other.</remarks>
public sealed class StateWithoutPower() : Aspect<SolenoidValveSpec, SolenoidValveSite, StateFacet>("Without power", isDeciding: true, SolenoidValveSources.NormalState, new(0.3, 0.5, 2))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["normalState"], ["needsState"]);

    /// <inheritdoc/>
    public override StateFacet Read(SolenoidValveSpec part) => new(part.NormalState);

    /// <inheritdoc/>
    public override Finding Judge(SolenoidNeed need, StateFacet facet) => (need.Site.NeedsState, facet.State) switch
    {
        (_, null) => Finding.Unknown(Side.Part, "normalState", $"Whether it is normally closed or normally open is not given."),
        (null, { } has) => Finding.Unknown(Side.Site, "needsState", $"It is {new Spelt<NormalState>(has)}; what is needed there is not known."),
        ({ } needs, { } has) when needs == has => Finding.Meets($"It is {new Spelt<NormalState>(has)}, as is needed."),
        ({ } needs, { } has) => Finding.Fails($"It is {new Spelt<NormalState>(has)}; a {new Spelt<NormalState>(needs)} one is needed."),
    };
}
