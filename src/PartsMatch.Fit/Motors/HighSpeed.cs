using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>A figure at high speed and the frequency at which it holds.</summary>
/// <param name="Hertz">The frequency in Hz; NaN when the plate does not say.</param>
/// <param name="Value">Watts or rpm.</param>
public readonly record struct AtFrequency(double Hertz, double Value);

/// <summary>What a motor gives at its highest speed, at each frequency it is rated for.</summary>
/// <remarks>
/// The greatest figure of a frequency is the one at high speed: a fan's power grows with its speed.
/// 900/1075 rpm without a frequency may be two speeds or one speed at 50 and 60 Hz: then both figures stay possible.
/// </remarks>
public static class HighSpeed
{
    private static readonly double[] Mains = [50, 60];

    /// <summary>Full-load speeds in rpm.</summary>
    public static Sequence<AtFrequency> Rpm(MotorSpec spec) =>
        Spec.Once(spec, static spec => Points(spec, row => row.Speed is { } speed ? Rounded.To(speed.RevolutionsPerMinute, 0) : null));

    /// <summary>Powers in watts.</summary>
    public static Sequence<AtFrequency> Watts(MotorSpec spec) =>
        Spec.Once(spec, static spec => Points(spec, row => row.Power is { } power ? Rounded.To((double)power.Watts, 1) : null));

    /// <summary>The figures that are possible at a supply's frequency: one, unless something is unknown.</summary>
    /// <param name="points">Figures by frequency.</param>
    /// <param name="supplyHertz">The supply's frequency; null when unknown. A frequency that no figure holds at leaves all possible: another aspect judges it.</param>
    public static Sequence<double> At(Sequence<AtFrequency> points, double? supplyHertz) =>
        points.Count == 1 ? [points[0].Value]
        : supplyHertz is { } hertz && Distinct(points, hertz) is { Count: > 0 } there ? there : Distinct(points, double.NaN);

    /// <summary>Whether two figures may be one speed at 50 and 60 Hz, because the plate names no frequency and does not count them as speeds.</summary>
    public static bool MayBeByFrequency(MotorSpec spec) =>
        spec.Frequency is null && !RatedSpeeds.AreCounted(spec) && (spec.Speed is { Count: > 1 } || spec.Power is { Count: > 1 })
            && (RatedSpeeds.Step(spec, Mains) || RatedSpeeds.Step(spec, [.. Mains.Reverse()]));

    /// <summary>The different figures that hold at a frequency, each once; all of them at NaN.</summary>
    private static Sequence<double> Distinct(Sequence<AtFrequency> points, double hertz)
    {
        Span<double> values = points.Count <= 8 ? stackalloc double[8] : new double[points.Count];
        var count = 0;
        foreach (var point in points.AsSpan())
        {
            var holds = double.IsNaN(hertz) || double.IsNaN(point.Hertz) || SupplyWindows.TakesFrequency(point.Hertz, hertz);
            if (holds && !values[..count].Contains(point.Value)) values[count++] = point.Value;
        }

        return Sequence.Of<double>(values[..count]);
    }

    private static Sequence<AtFrequency> Points(MotorSpec spec, Func<RatedSpeed, double?> figure)
    {
        List<AtFrequency> points = [];
        foreach (var row in RatedSpeeds.Of(spec))
        {
            if (figure(row) is not { } value) continue;
            if (row.Frequencies.Count == 0) points.Add(new(double.NaN, value));
            foreach (var frequency in row.Frequencies) points.Add(new(Rounded.To(frequency.Hertz, 2), value));
        }

        if (points.Count < 2) return [.. points];

        // Without a frequency they hold as they stand where they may be one speed at 50 and 60 Hz; else the greatest of a frequency counts.
        return spec.Frequency is null && MayBeByFrequency(spec)
            ? [.. points.Distinct()]
            : [.. points.GroupBy(point => point.Hertz).OrderBy(same => same.Key).Select(same => new AtFrequency(same.Key, same.Max(point => point.Value)))];
    }
}
