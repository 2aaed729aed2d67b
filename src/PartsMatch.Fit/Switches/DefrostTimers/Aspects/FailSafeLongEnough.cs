using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.DefrostTimers.Aspects;

/// <summary>What the fail-safe reads of a timer, minutes.</summary>
/// <param name="Low">The shortest; null when not known.</param>
/// <param name="High">The longest; null when not known.</param>
public readonly record struct FailSafeFacet(double? Low, double? High);

/// <summary>Can its fail-safe be set as long as the longest defrost takes?</summary>
/// <remarks>
/// The minutes needed are at most its longest, the edge included; with a shortest above them a defrost that time alone ends lasts too long, and fails, else it is a check.
/// Minutes that hold for the heaters' own volts are scaled to the volts there first. Where none are known, a span that holds the old one's meets.
/// </remarks>
public sealed class FailSafeLongEnough() : Aspect<DefrostTimerSpec, DefrostTimerSite, FailSafeFacet>("Fail-safe", isDeciding: true, DefrostTimerSources.FailSafe, new(0.7, 0.5, 1))
{
    /// <summary>Up to this share of its longest nobody gives a fail-safe a thought (practice).</summary>
    private const double EasyShare = 0.8;

    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a fail-safe with", "of its longest to spare", 100 * (1 - EasyShare), 0, "%") { Or = new("a shortest", "over what is needed", 0, 100, "%") };

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["failSafe"], ["minutesNeeded", "minutesAtHeaterVolts"]) { Besides = ["endedThereBy", "heaterOwnVolts", "loadVolts"] };

    /// <inheritdoc/>
    public override FailSafeFacet Read(DefrostTimerSpec part) => new(part.FailSafe?.Figures.Low, part.FailSafe?.Figures.High);

    /// <inheritdoc/>
    public override Finding Judge(DefrostTimerNeed need, FailSafeFacet facet)
    {
        var site = need.Site;
        if (site is { MinutesNeeded: null, MinutesAtHeaterVolts: { } own }) return Finding.Unknown(Side.Site, site.LoadVolts is null ? "loadVolts" : "heaterOwnVolts", $"{own.Figure:0.#} min are needed at the heaters' own volts; what that is at the volts there is not known.");
        if (site.MinutesNeeded is null && need.Plate.FailSafe is null) return Finding.Unknown(Side.Site, "minutesNeeded", $"How long the longest defrost takes there is not known.");
        if (facet is not { Low: { } low, High: { } high }) return Finding.Unknown(Side.Part, "failSafe", $"How long its fail-safe can be set is not known.");
        if (site.MinutesNeeded is { } needed) return Against(needed.Figure, new(low, high), site.EndedThereBy);
        var old = need.Plate.FailSafe!.Figures;
        return Within.AtMost(low, old.Low) && Within.AtLeast(high, old.High)
            ? Finding.Meets($"Its fail-safe {ShownRange.Goes(low, high, " min")}, the old one's {ShownRange.AsWell(old.Low, old.High, " min")}.")
            : Finding.Unknown(Side.Site, "minutesNeeded", $"Its fail-safe {ShownRange.Goes(low, high, " min")}, the old one's {ShownRange.AsWell(old.Low, old.High, " min")}; how long the longest defrost takes there is not known.");
    }

    private static Finding Against(double needed, Band span, DefrostEnd? end)
    {
        var margin = new Margin(span.High - needed, "min");
        if (!Within.AtMost(needed, span.High)) return Finding.Fails(margin, $"Its fail-safe goes up to {span.High:0.#} min; {needed:0.#} min are needed.");
        if (Within.AtLeast(needed, span.Low)) return Finding.Meets($"Its fail-safe {ShownRange.Goes(span.Low, span.High, " min")}; {needed:0.#} min are needed.") with { Margin = margin, Shortfall = Math.Max(0, ((needed / span.High) - EasyShare) / (1 - EasyShare)) };
        return end == DefrostEnd.Time
            ? Finding.Fails(new Margin(needed - span.Low, "min"), $"It cannot be set under {span.Low:0.#} min; {needed:0.#} min are needed, and time alone ends a defrost there.")
            : Finding.MeetsWith([new(DefrostTimerChanges.CheckLongerDefrost, $"see that {span.Low:0.#} min of heat do no harm: it cannot be set to the {needed:0.#} min that are needed")], $"Its fail-safe {ShownRange.Goes(span.Low, span.High, " min")}; {needed:0.#} min are needed.") with { Margin = new(needed - span.Low, "min"), Shortfall = Math.Min(1, (span.Low / needed) - 1) };
    }
}
