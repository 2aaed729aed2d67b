using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.DefrostTimers.Aspects;

/// <summary>What poles read of a timer.</summary>
/// <param name="Count">Its poles; null when not known.</param>
public readonly record struct TimerPolesFacet(int? Count);

/// <summary>Has the timer as many poles as the old one?</summary>
/// <remarks>More are left unused; fewer fail. Plates hardly print them, and a look at the old one's wires tells: where they are not known, that no more lines are switched than this one can is a check.</remarks>
public sealed class PolesOfTimer() : Aspect<DefrostTimerSpec, DefrostTimerSite, TimerPolesFacet>("Poles", isDeciding: true, DefrostTimerSources.PolesOfTimer, new(0.3, 0.5, 0.8))
{
    /// <summary>No timer has more.</summary>
    private const int Most = 4;

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["poles"], []);

    /// <inheritdoc/>
    public override TimerPolesFacet Read(DefrostTimerSpec part) => new(part.Poles);

    /// <inheritdoc/>
    public override Finding Judge(DefrostTimerNeed need, TimerPolesFacet facet) => (need.Plate.Poles, facet.Count) switch
    {
        (null, null) => Finding.Unknown(Side.Part, "poles", $"How many poles it has, and how many the old one had, is not known."),
        (null, >= Most) => Finding.Meets($"It has {facet.Count} poles, as many as any timer."),
        (null, { } count) => Finding.MeetsWith([new(DefrostTimerChanges.CheckPoles, $"see that the old one switched no more than {(count == 1 ? "one line" : $"{count} lines")}")], $"How many poles the old one had is not known; this one's: {count}."),
        ({ } old, null) => Finding.Unknown(Side.Part, "poles", $"The old one had {old}; this one's poles are not known."),
        ({ } old, { } count) when count >= old => Finding.Meets($"The old one's poles: {old}; this one's: {count}.") with { Shortfall = count > old ? 0.3 : 0 },
        ({ } old, { } count) => Finding.Fails(new Margin(count - old, "poles"), $"The old one's poles: {old}; this one's: {count}."),
    };
}
