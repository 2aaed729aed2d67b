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
        var (supply, hertz) = (SupplyVolts.Of(need, phases), SupplyVolts.HertzOf(need));
        var taken = new TakenAmps(amps.Rows, hertz);
        var choice = TapChoice.Best(amps.Connections.Taps, supply, TapChoice.Old(need));
        var likely = choice is { } chosen && chosen.Tap.Takes(chosen.Supply.Volts) ? taken.At(chosen.Tap, chosen.Supply.Volts)
            : supply.LinesMeasured ? TakenRange.None
            : Supposed(amps.Connections.Taps, taken, need, candidate);
        var possible = supply.LinesMeasured ? Possible(amps.Connections.Taps, taken, supply) : TakenRange.None;
        if (possible.IsNone) possible = taken.AtEnds(null);
        if (likely.IsNone) likely = possible;
        return new(likely.Most, possible.Least, likely.VoltsOfMost, hertz is null && taken.HaveSeveralFrequencies ? "supplyFrequency" : supply.LinesMeasured ? "neutralVolts" : "volts");
    }

    /// <summary>With nothing measured the supply is one that the old motor took: the middle of its taps, where the candidate takes it too.</summary>
    private static TakenRange Supposed(Sequence<VoltTap> taps, TakenAmps taken, MotorNeed need, Sequence<VoltTap> candidate)
    {
        var all = TakenRange.None;
        foreach (var old in VoltTap.OfOld(need).AsSpan())
        {
            var volts = (old.Low + old.High) / 2;
            if (Nearest(candidate, volts) is not null && Nearest(taps, volts) is { } tap) all = all.With(taken.At(tap, volts));
        }

        return all;
    }

    /// <summary>What it could take at any of the volts that are there, or that a neutral nobody measured may bring; none where only such a neutral could suit it, since it may bring nothing.</summary>
    private static TakenRange Possible(Sequence<VoltTap> taps, TakenAmps taken, SupplyVolts supply)
    {
        var (sure, maybe) = (TakenRange.None, TakenRange.None);
        foreach (var tap in taps.AsSpan())
        {
            foreach (var there in supply.Available.AsSpan())
            {
                if (tap.Takes(there.Volts)) sure = sure.With(taken.At(tap, there.Volts));
            }

            if (supply.NeutralMayHelp(tap, SupplyWindows.MostVoltsOff)) maybe = maybe.With(taken.AtEnds(tap));
        }

        return sure.IsNone ? sure : sure.With(maybe);
    }

    /// <summary>The tap nearest to volts of those that take them; null when none does.</summary>
    private static VoltTap? Nearest(Sequence<VoltTap> taps, double volts)
    {
        VoltTap? nearest = null;
        foreach (var tap in taps.AsSpan())
        {
            if (tap.Takes(volts) && (nearest is not { } before || tap.Off(volts) < before.Off(volts))) nearest = tap;
        }

        return nearest;
    }
}
