using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.DefrostTimers.Aspects;

/// <summary>What starts read of a timer.</summary>
/// <param name="Least">The fewest a day; null when not known.</param>
/// <param name="Most">The most a day; null when not known.</param>
public readonly record struct StartsFacet(int? Least, int? Most);

/// <summary>Can it start as many defrosts a day as the coil needs?</summary>
/// <remarks>The number needed lies between its fewest and its most, edges included. Where it is not known, a programme that holds the old one's meets.</remarks>
public sealed class StartsEnough() : Aspect<DefrostTimerSpec, DefrostTimerSite, StartsFacet>("Starts a day", isDeciding: true, DefrostTimerSources.Starts, new(0.5, 0.5, 1))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["starts"], ["startsNeeded"]);

    /// <inheritdoc/>
    public override StartsFacet Read(DefrostTimerSpec part) => new(part.Starts?.Least, part.Starts?.Most);

    /// <inheritdoc/>
    public override Finding Judge(DefrostTimerNeed need, StartsFacet facet)
    {
        if (need.Site.StartsNeeded is null && need.Plate.Starts is null) return Finding.Unknown(Side.Site, "startsNeeded", $"How many defrosts a day the coil needs is not known.");
        if (facet is not { Least: { } least, Most: { } most }) return Finding.Unknown(Side.Part, "starts", $"How many defrosts a day it can start is not known.");
        if (need.Site.StartsNeeded is { } needed)
        {
            return needed >= least && needed <= most
                ? Finding.Meets($"Its programme starts {new StartsADay(least, most)}; {needed} are needed.") with { Margin = new(Math.Min(needed - least, most - needed), "starts"), Shortfall = needed == most && least < most ? 0.3 : 0 }
                : Finding.Fails(new Margin(Math.Min(needed - least, most - needed), "starts"), $"Its programme starts {new StartsADay(least, most)}; {needed} are needed.");
        }

        var old = need.Plate.Starts!;
        return least <= old.Least && most >= old.Most
            ? Finding.Meets($"Its programme starts {new StartsADay(least, most)}, the old one's {old}.")
            : Finding.Unknown(Side.Site, "startsNeeded", $"Its programme starts {new StartsADay(least, most)}, the old one's {old}; how many the coil needs is not known.");
    }
}
