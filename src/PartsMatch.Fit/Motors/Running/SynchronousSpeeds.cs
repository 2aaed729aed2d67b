namespace PartsMatch.Fit.Motors.Running;

/// <summary>The speeds of the turning field that a motor's full-load speed leaves.</summary>
internal static class SynchronousSpeeds
{
    /// <summary>Synchronous speeds of the poles on its plate where its speed can be theirs, else of each count that its speed leaves: on the supply, or at the frequencies of its plate where it is not theirs there. Else of the plate's poles where it is below them; none where nothing is.</summary>
    public static List<double?> Of(RunningFacet motor, double rpm, double? supplyHertz)
    {
        var found = Fitting(motor, rpm, supplyHertz);
        if (found.Count == 0 && supplyHertz is not null) found = Fitting(motor, rpm, null);
        if (found.Count > 0 || motor.Poles is not { } only) return found;
        foreach (var hertz in HertzAt(motor, rpm, supplyHertz)) Add(found, rpm, only, hertz);
        return found;
    }

    /// <summary>The frequencies at which a motor may be rated for a speed, Hz: those that the supply's is taken for, else all of its plate's, else the supply's; none when none is known.</summary>
    public static List<double> HertzAt(RunningFacet motor, double rpm, double? supplyHertz)
    {
        var (rated, taken) = (new List<double>(2), new List<double>(2));
        foreach (var point in motor.Rpm.AsSpan())
        {
            if (!point.Value.Equals(rpm) || double.IsNaN(point.Hertz)) continue;
            rated.Add(point.Hertz);
            if (supplyHertz is { } there && SupplyWindows.TakesFrequency(point.Hertz, there)) taken.Add(point.Hertz);
        }

        return taken.Count > 0 ? taken : rated.Count > 0 || supplyHertz is not { } own ? rated : [own];
    }

    private static List<double?> Fitting(RunningFacet motor, double rpm, double? supplyHertz)
    {
        var found = new List<double?>(2);
        foreach (var hertz in HertzAt(motor, rpm, supplyHertz))
        {
            IReadOnlyList<int> counts = motor.Poles is { } read && PoleCounts.Fits(rpm, read, hertz) ? [read] : PoleCounts.Of(rpm, hertz);
            foreach (var poles in counts) Add(found, rpm, poles, hertz);
        }

        return found;
    }

    private static void Add(List<double?> found, double rpm, int poles, double hertz)
    {
        var synchronous = PoleCounts.Synchronous(poles, hertz);
        if (synchronous > rpm && !found.Contains(synchronous)) found.Add(synchronous);
    }
}
