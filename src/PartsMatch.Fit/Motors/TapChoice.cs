using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors;

/// <summary>A tap, and the volts it would be connected to.</summary>
/// <param name="Tap">The tap.</param>
/// <param name="Supply">The volts.</param>
public readonly record struct TapChoice(VoltTap Tap, AvailableVolts Supply)
{
    /// <summary>How far the volts lie outside the tap, as a fraction.</summary>
    public double Off => Tap.Off(Supply.Volts);

    /// <summary>The best tap for a supply: one that takes its volts, connected as the old motor was, and nearest to its rating; null when there is nothing to choose from.</summary>
    /// <param name="taps">The part's taps.</param>
    /// <param name="supply">What is there.</param>
    /// <param name="oldBetween">What the old motor was connected between; null when unknown.</param>
    public static TapChoice? Best(Sequence<VoltTap> taps, SupplyVolts supply, Between? oldBetween)
    {
        TapChoice? best = null;
        var (least, nearest) = (int.MaxValue, 0.0);
        foreach (var tap in taps.AsSpan())
        {
            foreach (var volts in supply.Available.AsSpan())
            {
                var choice = new TapChoice(tap, volts);
                var (misses, off) = ((tap.Takes(volts.Volts) ? 0 : 2) + (oldBetween is null || volts.Between == oldBetween ? 0 : 1), choice.Off);
                if (misses > least || (misses == least && off >= nearest)) continue;
                (best, least, nearest) = (choice, misses, off);
            }
        }

        return best;
    }

    /// <summary>What the old motor was connected between: where its plate's volts are found; null when unknown or found nowhere.</summary>
    public static Between? Old(MotorNeed need) => need.Once(static need =>
        need.Plate.Phase == Phases.Three ? Between.Lines
        : Best(VoltTap.OfOld(need), SupplyVolts.Of(need, Phases.Single), Between.Lines) is { } choice && choice.Tap.Takes(choice.Supply.Volts)
            ? choice.Supply.Between : (Between?)null);
}
