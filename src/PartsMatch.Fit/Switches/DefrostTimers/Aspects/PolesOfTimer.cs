using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.DefrostTimers.Aspects;

/// <summary>What poles read of a timer.</summary>
/// <param name="Count">Its poles; null when not known.</param>
public readonly record struct TimerPolesFacet(int? Count);

/// <summary>Has the timer as many poles as the old one?</summary>
/// <remarks>More are left unused; fewer fail.</remarks>
public sealed class PolesOfTimer() : Aspect<DefrostTimerSpec, DefrostTimerSite, TimerPolesFacet>("Poles", isDeciding: true, DefrostTimerSources.PolesOfTimer, new(0.3, 0.5, 0.8))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["poles"], []);

    /// <inheritdoc/>
    public override TimerPolesFacet Read(DefrostTimerSpec part) => new(part.Poles);

    /// <inheritdoc/>
    public override Finding Judge(DefrostTimerNeed need, TimerPolesFacet facet) => (need.Plate.Poles, facet.Count) switch
    {
        (null, null or 1) => Finding.Unknown(Side.Plate, "poles", $"How many poles the old one had is not known."),
        (null, { } count) => Finding.Meets($"It has {count} poles, as many as any such timer."),
        ({ } old, null) => Finding.Unknown(Side.Part, "poles", $"The old one had {old}; this one's poles are not known."),
        ({ } old, { } count) when count >= old => Finding.Meets($"The old one's poles: {old}; this one's: {count}.") with { Shortfall = count > old ? 0.3 : 0 },
        ({ } old, { } count) => Finding.Fails(new Margin(count - old, "poles"), $"The old one's poles: {old}; this one's: {count}."),
    };
}
