using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.PressureControls.Aspects;

/// <summary>What the highest pressure reads of a pressure control.</summary>
/// <param name="Most">Its highest working pressure, kPa; null when not known.</param>
public readonly record struct PressureMostFacet(double? Most);

/// <summary>Does it bear the pressure that its side is tested at?</summary>
/// <remarks>At least the test pressure, the edge included. Where that is not known, one that bears as much as the old one meets.</remarks>
public sealed class WorkingPressure() : Aspect<PressureControlSpec, PressureControlSite, PressureMostFacet>("Working pressure", isDeciding: true, PressureControlSources.WorkingPressure, new(0.4, 0.5, 0.8))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["pressureMost"], ["testPressure"]);

    /// <inheritdoc/>
    public override PressureMostFacet Read(PressureControlSpec part) => new(Settings.In(part.PressureMost));

    /// <inheritdoc/>
    public override Finding Judge(PressureControlNeed need, PressureMostFacet facet)
    {
        var (test, old) = (Settings.In(need.Site.TestPressure), Settings.In(need.Plate.PressureMost));
        if (facet.Most is not { } most) return Finding.Unknown(Side.Part, "pressureMost", $"The highest pressure that it bears is not known.");
        if (test is { } tested)
        {
            return Within.AtLeast(most, tested)
                ? Finding.Meets($"It bears {new ShownPressure(most)}; its side is tested at {new ShownPressure(tested)}.") with { Margin = new(most - tested, "kPa") }
                : Finding.Fails(new Margin(most - tested, "kPa"), $"It bears {new ShownPressure(most)}; its side is tested at {new ShownPressure(tested)}.");
        }

        return old is { } bore && Within.AtLeast(most, bore)
            ? Finding.Meets($"It bears {new ShownPressure(most)}, the old one {new ShownPressure(bore)}.")
            : Finding.Unknown(Side.Site, "testPressure", $"It bears {new ShownPressure(most)}; what its side is tested at is not known.");
    }
}
