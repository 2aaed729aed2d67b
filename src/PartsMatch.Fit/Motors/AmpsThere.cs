using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors;

/// <summary>The amps that a motor takes at a site.</summary>
/// <param name="Most">The most it is likely to take, A: at the tap that would be chosen.</param>
/// <param name="Least">The least it could take, A, whatever is measured yet; equal to <paramref name="Most"/> when tap and frequency are certain.</param>
/// <param name="Missing">The field of the site that would tell between them.</param>
public readonly record struct AmpsThere(double Most, double Least, string Missing)
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
        double[] any = [.. held.SelectMany(row => (double[])[row.AtLow, row.AtHigh])];

        var choice = TapChoice.Best(taps, supply, TapChoice.Old(need));
        List<double> likely = choice is { } chosen && chosen.Tap.Takes(chosen.Supply.Volts)
            ? [.. At(held, chosen.Tap, chosen.Supply.Volts)]
            : supply.LinesMeasured ? [] : [.. Supposed(need, candidate).SelectMany(volts => taps.Where(tap => tap.Takes(volts)).OrderBy(tap => tap.Off(volts)).Take(1).SelectMany(tap => At(held, tap, volts)))];
        List<double> possible = supply.LinesMeasured
            ? [.. taps.SelectMany(tap => supply.Available.Where(there => tap.Takes(there.Volts)).SelectMany(there => At(held, tap, there.Volts))
                .Concat(supply.NeutralMayHelp(tap, SupplyWindows.MostVoltsOff) ? Ends(held, tap) : []))]
            : [];
        if (possible.Count == 0) possible = [.. any];
        if (likely.Count == 0) likely = possible;
        return new(likely.Max(), possible.Min(), hertz is null && held.Select(row => row.Hertz).Distinct().Count() > 1 ? "supplyFrequency" : supply.LinesMeasured ? "neutralVolts" : "volts");
    }

    /// <summary>With nothing measured the supply is one that the old motor took: the middle of its taps, where the candidate takes it too.</summary>
    private static IEnumerable<double> Supposed(MotorNeed need, Sequence<VoltTap> candidate) =>
        VoltTap.Of(need.Plate.Voltage).Select(tap => (tap.Low + tap.High) / 2).Where(volts => candidate.Any(tap => tap.Takes(volts)));

    private static IEnumerable<double> At(IEnumerable<AmpsRow> rows, VoltTap tap, double volts) => rows.Where(row => row.Tap == tap).Select(row => row.At(volts));

    private static IEnumerable<double> Ends(IEnumerable<AmpsRow> rows, VoltTap tap) => rows.Where(row => row.Tap == tap).SelectMany(row => (double[])[row.AtLow, row.AtHigh]);
}
