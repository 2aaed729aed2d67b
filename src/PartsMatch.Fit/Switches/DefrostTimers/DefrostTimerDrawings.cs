using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.DefrostTimers;

/// <summary>What is drawn of a defrost timer: the minutes needed within the span of its fail-safe.</summary>
public static class DefrostTimerDrawings
{
    /// <summary>A part's fail-safe with what is needed, or with the old one's; none where either is not known.</summary>
    public static IReadOnlyList<Drawing> Of(DefrostTimerNeed need, DefrostTimerSpec part)
    {
        if (part.FailSafe?.Figures is not { } good) return [];
        var needed = need.Site.MinutesNeeded?.Figure;
        if ((needed is { } asked ? Band.Exactly(asked) : need.Plate.FailSafe?.Figures) is not { } mark) return [];
        var range = new Band(0, 1.1 * Math.Max(good.High, mark.High));
        var words = needed is { } minutes
            ? FormattableString.Invariant($"{minutes:0.#} min are needed, {(good.Holds(minutes) ? "within it" : "not within it")}.")
            : FormattableString.Invariant($"The old one's {ShownRange.Goes(mark.Low, mark.High, " min")}.");
        return
        [
            new Scale(
                "failSafe",
                "Minutes of defrost within its fail-safe",
                FormattableString.Invariant($"Its fail-safe can be set {ShownRange.Set(good.Low, good.High, " min")}. {words}"),
                "min",
                range,
                [new("too short", Role.Open, new(range.Low, good.Low)), new("can be set", Role.Good, good), new("too long", Role.Bad, new(good.High, range.High))],
                [new(needed is { } one ? FormattableString.Invariant($"needed: {one:0.#} min") : "the old one's", needed is null ? Role.Old : Role.Limit, mark), .. SameAtOwnVolts(need)]),
        ];
    }

    /// <summary>What the heaters take at their own volts, beside what they take there.</summary>
    private static IEnumerable<ScaleMark> SameAtOwnVolts(DefrostTimerNeed need) =>
        need.Site.MinutesAtHeaterVolts is { Figure: var minutes } && need.Site.MinutesNeeded is not null ? [new(FormattableString.Invariant($"at the heaters' own volts: {minutes:0.#} min"), Role.Soft, Band.Exactly(minutes))] : [];
}
