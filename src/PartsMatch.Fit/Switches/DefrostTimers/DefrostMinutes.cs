using PartsMatch.Fit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace PartsMatch.Fit.Switches.DefrostTimers;

/// <summary>How long a defrost lasts, or may last: 30 min, 1.5 h.</summary>
/// <param name="Value">The time, as it was given.</param>
public readonly record struct DefrostMinutes(Duration Value) : IHaveTextForm<DefrostMinutes>
{
    // Before the form, which is made of it.
    private static readonly UnitText Minute = new(DurationUnit.Minute, "min", 1, false, "mins", "minute", "minutes");

    /// <summary>Half a minute to a day.</summary>
    internal static QuantityForm<Duration> Time { get; } = new("a time", "30 min", 0.5, 1440, Minute, Minute, new UnitText(DurationUnit.Hour, "h", 2, false, "hr", "hrs", "hour", "hours"));

    /// <inheritdoc/>
    public static TextForm<DefrostMinutes> Form { get; } = new OwnQuantityForm<DefrostMinutes, Duration>(Time, time => new(time), minutes => minutes.Value);

    /// <summary>The time in minutes, to a tenth, as facets hold it.</summary>
    internal double Figure => Rounded.To(Value.Minutes, 1);
}

/// <summary>Times from one to another: 4 to 110 min.</summary>
/// <param name="Low">The shorter.</param>
/// <param name="High">The longer; the same again for a single time.</param>
public sealed record MinutesSpan(Duration Low, Duration High) : IHaveTextForm<MinutesSpan>
{
    /// <inheritdoc/>
    public static TextForm<MinutesSpan> Form { get; } = new SpanForm<MinutesSpan, Duration>(DefrostMinutes.Time, "time", "times", "4 to 110 min", (low, high) => new(low, high), span => (span.Low, span.High));

    /// <summary>Both ends in minutes, as facets hold them.</summary>
    internal Band Figures => new(new DefrostMinutes(Low).Figure, new DefrostMinutes(High).Figure);
}
