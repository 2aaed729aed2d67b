using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors;

/// <summary>The amps that a motor takes at a site.</summary>
/// <param name="Most">The most it is likely to take, A: at the tap that would be chosen.</param>
/// <param name="Least">The least it could take, A, whatever is measured yet; equal to <paramref name="Most"/> when tap and frequency are certain.</param>
/// <param name="Volts">The volts at which it takes the most; null when unknown.</param>
/// <param name="Missing">The field of the site that would tell between them.</param>
public readonly record struct AmpsThere(double Most, double Least, double? Volts, string Missing)
{
    /// <summary>The amps of a motor.</summary>
    /// <param name="amps">The motor's amps; at least one row.</param>
    /// <param name="need">Plate and site.</param>
    /// <param name="phases">Phases of the motor.</param>
    /// <param name="candidate">The candidate's taps: with no volts measured, old and new are compared at those of the old taps that one of these takes.</param>
    public static AmpsThere Of(MotorAmps amps, MotorNeed need, Phases phases, Sequence<VoltTap> candidate)
    {
        var supply = SupplyVolts.Of(need.Site, phases);
        var taps = amps.Connections.Taps;
        var hertz = need.Site.SupplyFrequency?.Hertz;
        var held = amps.Rows.Where(row => hertz is not { } there || double.IsNaN(row.Hertz) || SupplyWindows.TakesFrequency(row.Hertz, there)).ToList();
        if (held.Count == 0) held = [.. amps.Rows];
        var choice = TapChoice.Best(taps, supply, TapChoice.Old(need));
        List<Taken> likely = choice is { } chosen && chosen.Tap.Takes(chosen.Supply.Volts)
            ? [.. At(held, chosen.Tap, chosen.Supply.Volts)]
            : supply.LinesMeasured ? [] : [.. Supposed(need, candidate).SelectMany(volts => taps.Where(tap => tap.Takes(volts)).OrderBy(tap => tap.Off(volts)).Take(1).SelectMany(tap => At(held, tap, volts)))];
        List<Taken> possible = supply.LinesMeasured
            ? [.. taps.SelectMany(tap => supply.Available.Where(there => tap.Takes(there.Volts)).SelectMany(there => At(held, tap, there.Volts))
                .Concat(supply.NeutralMayHelp(tap, SupplyWindows.MostVoltsOff) ? held.Where(row => row.Tap == tap).SelectMany(Ends) : []))]
            : [];
        if (possible.Count == 0) possible = [.. held.SelectMany(Ends)];
        if (likely.Count == 0) likely = possible;
        var most = likely.MaxBy(one => one.Amps);
        return new(most.Amps, possible.Min(one => one.Amps), most.Volts, hertz is null && held.Select(row => row.Hertz).Distinct().Count() > 1 ? "supplyFrequency" : supply.LinesMeasured ? "neutralVolts" : "volts");
    }

    /// <summary>With nothing measured the supply is one that the old motor took: the middle of its taps, where the candidate takes it too.</summary>
    private static IEnumerable<double> Supposed(MotorNeed need, Sequence<VoltTap> candidate) =>
        VoltTap.Of(need.Plate.Voltage).Select(tap => (tap.Low + tap.High) / 2).Where(volts => candidate.Any(tap => tap.Takes(volts)));

    private static IEnumerable<Taken> At(IEnumerable<AmpsRow> rows, VoltTap tap, double volts) => rows.Where(row => row.Tap == tap).Select(row => new Taken(row.At(volts), volts));

    private static IEnumerable<Taken> Ends(AmpsRow row) => [new(row.AtLow, row.Tap?.Low), new(row.AtHigh, row.Tap?.High)];

    private readonly record struct Taken(double Amps, double? Volts);
}
