using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Published;

namespace PartsMatch.Fit.Valves.SolenoidValves.Aspects;

/// <summary>What is read of a valve's ways.</summary>
/// <param name="Both">Whether it may be flowed through both ways; null where not given.</param>
public readonly record struct WaysFacet(bool? Both);

/// <summary>Does the valve hold both ways where the flow reverses?</summary>
/// <remarks>A one-way valve in a reversing line fails. Where nobody said anything of it, only an old valve for both ways asks for the same again.</remarks>
public sealed class FlowBothWays() : Aspect<SolenoidValveSpec, SolenoidValveSite, WaysFacet>("Flow direction", isDeciding: false, ValveSources.BothWays, new(0.3, 0.5, 0.6))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["bothWays"], ["flowReverses"]);

    /// <inheritdoc/>
    public override WaysFacet Read(SolenoidValveSpec part) => new(part.BothWays);

    /// <inheritdoc/>
    public override Finding Judge(SolenoidNeed need, WaysFacet facet) => (need.Site.FlowReverses, facet.Both) switch
    {
        (_, true) => Finding.Meets($"It may be flowed through both ways."),
        (false, _) => Finding.Meets($"Refrigerant flows through it one way."),
        (true, false) => Finding.Fails($"The flow reverses there; this valve is lifted from behind by it."),
        (true, null) => Finding.Unknown(Side.Part, "bothWays", $"The flow reverses there; whether the valve holds both ways is not given."),
        (null, _) when need.Plate.BothWays == true => Finding.Unknown(Side.Site, "flowReverses", $"The old valve was for both ways, this one is not said to be; whether the flow reverses there is not known."),
        _ => Finding.Meets($"Nothing says that the flow reverses there."),
    };
}
