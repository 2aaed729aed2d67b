using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Motors;

/// <summary>Power and speed that belong together, and the frequencies at which they hold. Null or empty is unknown.</summary>
/// <param name="Frequencies">The frequencies.</param>
/// <param name="Power">Power.</param>
/// <param name="Speed">Full-load speed.</param>
public sealed record RatedSpeed(IReadOnlyList<Frequency> Frequencies, Power? Power, RotationalSpeed? Speed);

/// <summary>The part of the rating rows that every tap shares: speed, power and frequency.</summary>
public static class RatedSpeeds
{
    /// <summary>Full-load speeds at two frequencies step as the frequencies do; slip shifts them by less than this.</summary>
    internal const double SpeedsInStep = 0.05;

    /// <summary>Powers step as the frequencies do, but are rounded to what is usual: 0.37/0.44 kW, 1/4-1/3 hp at 50/60 Hz.</summary>
    internal const double PowersInStep = 0.15;

    /// <summary>The rows, at least one.</summary>
    public static IReadOnlyList<RatedSpeed> Of(MotorSpec spec) => Spec.Once(spec, Rows);

    /// <summary>Whether the rows are one speed at several frequencies: all that stands side by side steps as those do.</summary>
    internal static bool AreByFrequency(MotorSpec spec) => spec.Frequency is { Count: > 1 } frequency && !AreCounted(spec) && Step(spec, [.. frequency.Select(one => one.Hertz)]);

    /// <summary>Whether the plate counts as many speeds as it rates.</summary>
    internal static bool AreCounted(MotorSpec spec) => spec.Speeds is > 1 and var speeds && speeds == Math.Max(spec.Speed?.Count ?? 0, spec.Power?.Count ?? 0);

    /// <summary>Whether speeds step as the frequencies beside them would the other way round: 1140/950 rpm beside 50/60 Hz. Two speeds that the plate counts are no such pair.</summary>
    internal static bool AreCrossed(MotorSpec spec) =>
        spec is { Frequency: { Count: > 1 } frequency, Speed: { Count: > 1 } speed } && !AreCounted(spec) && !AreByFrequency(spec)
        && InStep([.. frequency.Select(one => one.Hertz).Reverse()], [.. speed.Select(one => one.RevolutionsPerMinute)], SpeedsInStep);

    /// <summary>Whether speeds and powers both step as frequencies do; a power that stays the same beside speeds that step does, too. Powers that do not step make two speeds of speeds that would.</summary>
    internal static bool Step(MotorSpec spec, double[] hertz)
    {
        if (spec.Speed is { Count: > 1 } speed && !InStep(hertz, [.. speed.Select(one => one.RevolutionsPerMinute)], SpeedsInStep)) return false;
        if (spec.Power is not { Count: > 1 } power) return true;
        double[] watts = [.. power.Select(one => (double)one.Watts)];
        return InStep(hertz, watts, PowersInStep) || (spec.Speed is { Count: > 1 } && Array.TrueForAll(watts, one => one.Equals(watts[0])));
    }

    /// <summary>Whether figures step as frequencies do, one for one.</summary>
    internal static bool InStep(double[] hertz, double[] figures, double within) =>
        hertz.Length == figures.Length
        && Enumerable.Range(1, hertz.Length - 1).All(row => Within.Ratio(figures[row] / figures[0], hertz[row] / hertz[0], 1 + within));

    private static IReadOnlyList<RatedSpeed> Rows(MotorSpec spec)
    {
        var (speeds, watts) = (spec.Speed?.Count ?? 0, spec.Power?.Count ?? 0);
        var byFrequency = AreByFrequency(spec);
        var count = speeds > 1 ? speeds : watts > 1 ? watts : byFrequency ? spec.Frequency!.Count : 1;
        return [.. Enumerable.Range(0, count).Select(row => new RatedSpeed(
            spec.Frequency is null ? [] : byFrequency ? [spec.Frequency[row]] : spec.Frequency,
            At(spec.Power, row, count),
            At(spec.Speed, row, count)))];
    }

    /// <summary>A figure of a row; null when there is none, or when the counts contradict one another.</summary>
    private static T? At<T>(Figures<T>? figures, int row, int count)
        where T : struct => figures is null || (figures.Count != 1 && figures.Count != count) ? null : figures.Of(row);
}
