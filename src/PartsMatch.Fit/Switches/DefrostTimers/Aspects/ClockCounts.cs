using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.DefrostTimers.Aspects;

/// <summary>What the clock's count reads of a timer.</summary>
/// <param name="Kind">What it counts; null when not known.</param>
public readonly record struct ClockCountsFacet(ClockKind? Kind);

/// <summary>Does its clock count what the old one's did: the hours of the day, or those that the compressor runs?</summary>
/// <remarks>The other kind is fed elsewhere: a change.</remarks>
public sealed class ClockCounts() : Aspect<DefrostTimerSpec, DefrostTimerSite, ClockCountsFacet>("What the clock counts", isDeciding: false, DefrostTimerSources.ClockCounts, new(0.3, 0.7, 0.5))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["clock"], []);

    /// <inheritdoc/>
    public override ClockCountsFacet Read(DefrostTimerSpec part) => new(part.Clock);

    /// <inheritdoc/>
    public override Finding Judge(DefrostTimerNeed need, ClockCountsFacet facet) => (need.Plate.Clock, facet.Kind) switch
    {
        (null, _) => Finding.Unknown(Side.Plate, "clock", $"What the old one's clock counted is not known."),
        ({ } old, null) => Finding.Unknown(Side.Part, "clock", $"The old one: {new Spelt<ClockKind>(old)}; what this one's clock counts is not known."),
        ({ } old, { } now) when old == now => Finding.Meets($"Its clock counts as the old one's did: {new Spelt<ClockKind>(now)}."),
        (ClockKind.RunningTime, _) => Finding.MeetsWith([new(DefrostTimerChanges.FeedClock, $"feed its clock from a line that never goes off: the old one's stopped with the compressor")], $"Its clock counts the hours of the day; the old one's counted those that the compressor ran."),
        _ => Finding.MeetsWith([new(DefrostTimerChanges.FeedClock, $"feed its clock from the compressor's circuit, so that it counts running time")], $"Its clock counts the hours that the compressor runs; the old one's counted those of the day."),
    };
}
