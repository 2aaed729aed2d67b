using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.PressureControls.Aspects;

/// <summary>What the function reads of a pressure control.</summary>
/// <param name="Function">Its function; null when not known.</param>
public readonly record struct FunctionFacet(PressureFunction? Function);

/// <summary>Is the control made for the same function?</summary>
/// <remarks>High pressure, low pressure, fan cycling: the same or it fails.</remarks>
public sealed class Function() : Aspect<PressureControlSpec, PressureControlSite, FunctionFacet>("Function", isDeciding: true, PressureControlSources.Function, new(0.3, 0.5, 1.5))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["function"], []);

    /// <inheritdoc/>
    public override FunctionFacet Read(PressureControlSpec part) => new(part.Function);

    /// <inheritdoc/>
    public override Finding Judge(PressureControlNeed need, FunctionFacet facet) => (need.Plate.Function, facet.Function) switch
    {
        (null, _) => Finding.Unknown(Side.Plate, "function", $"What the old control was there for is not known."),
        ({ } old, null) => Finding.Unknown(Side.Part, "function", $"The old one was for {new Spelt<PressureFunction>(old)}; what this one is for is not known."),
        ({ } old, { } now) when old == now => Finding.Meets($"It is for {new Spelt<PressureFunction>(now)}, as the old one was."),
        ({ } old, { } now) => Finding.Fails($"It is for {new Spelt<PressureFunction>(now)}; the old one was for {new Spelt<PressureFunction>(old)}."),
    };
}
