using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.Running;

/// <summary>The speeds of the turning field that a motor's full-load speed leaves.</summary>
internal static class SynchronousSpeeds
{
    /// <summary>Synchronous speeds of the poles on its plate where its speed can be theirs, else of each count that its speed leaves: on the supply, or at the frequencies of its plate where it is not theirs there. Else of the plate's poles where it is below them; none where nothing is.</summary>
    public static Sequence<double> Of(RunningFacet motor, double rpm, double? supplyHertz)
    {
        var there = HertzAt(motor, rpm, supplyHertz);
        if (Fitting(motor, rpm, there) is { Count: > 0 } fitting) return fitting;
        if (supplyHertz is not null && Fitting(motor, rpm, HertzAt(motor, rpm, null)) is { Count: > 0 } elsewhere) return elsewhere;
        return motor.Poles is { } only ? OfPoles(only, rpm, there) : [];
    }

    /// <summary>The frequencies at which a motor may be rated for a speed, Hz: those that the supply's is taken for, else all of its plate's, else the supply's; none when none is known.</summary>
    public static Sequence<double> HertzAt(RunningFacet motor, double rpm, double? supplyHertz)
    {
        if (supplyHertz is { } supply && Rated(motor, rpm, supply) is { Count: > 0 } taken) return taken;
        var all = Rated(motor, rpm, double.NaN);
        return all.Count > 0 || supplyHertz is not { } own ? all : [own];
    }

    /// <summary>The frequencies of its plate for a speed that a supply's is taken for; all of them at NaN.</summary>
    private static Sequence<double> Rated(RunningFacet motor, double rpm, double supply)
    {
        Span<double> rated = motor.Rpm.Count <= 8 ? stackalloc double[8] : new double[motor.Rpm.Count];
        var count = 0;
        foreach (var point in motor.Rpm.AsSpan())
        {
            if (point.Value.Equals(rpm) && !double.IsNaN(point.Hertz) && (double.IsNaN(supply) || SupplyWindows.TakesFrequency(point.Hertz, supply))) rated[count++] = point.Hertz;
        }

        return Sequence.Of<double>(rated[..count]);
    }

    private static Sequence<double> Fitting(RunningFacet motor, double rpm, Sequence<double> frequencies) =>
        frequencies.Count == 1 ? Fitting(motor, rpm, frequencies[0]) : OfEach(frequencies, motor, rpm);

    /// <summary>By itself, since its capture would be made for every judgement, and most have one frequency.</summary>
    private static Sequence<double> OfEach(Sequence<double> frequencies, RunningFacet motor, double rpm) => [.. frequencies.SelectMany(hertz => Fitting(motor, rpm, hertz)).Distinct()];

    private static Sequence<double> OfPoles(int only, double rpm, Sequence<double> frequencies) => [.. frequencies.SelectMany(hertz => Above(rpm, hertz, [only])).Distinct()];

    private static Sequence<double> Fitting(RunningFacet motor, double rpm, double hertz) =>
        motor.Poles is { } read && PoleCounts.Fits(rpm, read, hertz) ? Above(rpm, hertz, [read]) : Above(rpm, hertz, PoleCounts.Of(rpm, hertz).AsSpan());

    /// <summary>The synchronous speeds of pole counts that lie above a speed.</summary>
    private static Sequence<double> Above(double rpm, double hertz, ReadOnlySpan<int> poles)
    {
        Span<double> all = stackalloc double[poles.Length];
        var count = 0;
        foreach (var one in poles)
        {
            if (PoleCounts.Synchronous(one, hertz) is var synchronous && synchronous > rpm) all[count++] = synchronous;
        }

        return Sequence.Of<double>(all[..count]);
    }
}
