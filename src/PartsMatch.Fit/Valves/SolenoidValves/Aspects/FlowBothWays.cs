using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Valves.SolenoidValves.Aspects;

/// <summary>Does the valve hold both ways where the flow reverses?</summary>
/// <remarks>A one-way valve in a reversing line fails: it is lifted by pressure from behind. Where nobody said anything of it, only an old valve for both ways asks for the same again.</remarks>
public sealed class FlowBothWays() : Aspect<SolenoidValveSpec, SolenoidValveSite, WaysFacet>("Flow direction", isDeciding: true, ValveSources.BothWays, new(0.3, 0.5, 0.6))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["bothWays"], ["flowReverses"]);

    /// <inheritdoc/>
    public override WaysFacet Read(SolenoidValveSpec part) => new(part.BothWays);

    /// <inheritdoc/>
    public override Finding Judge(SolenoidNeed need, WaysFacet facet) => ValveWays.Judge(facet, need.Site.FlowReverses, need.Plate.BothWays);
}
