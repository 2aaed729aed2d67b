using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>The tap that a motor is to run on, and what its plate says there.</summary>
/// <param name="Tap">The tap.</param>
/// <param name="Amps">The most full-load amps that its plate gives for it, A; null when not known.</param>
internal readonly record struct ChosenTap(VoltTap Tap, double? Amps)
{
    /// <summary>The tap for a need: the one that the supply suits, or the only one there is; null when neither tells.</summary>
    public static ChosenTap? Of(MotorNeed need, MotorSpec part)
    {
        var taps = VoltTap.Of(part.Voltage);
        var phases = part.Phase ?? need.Site.SupplyPhase;
        var best = phases is { } known ? TapChoice.Best(taps, SupplyVolts.Of(need, known), TapChoice.Old(need)) : null;
        var chosen = best is { } choice && choice.Tap.Takes(choice.Supply.Volts) ? choice.Tap : taps.Count == 1 ? taps[0] : (VoltTap?)null;
        return chosen is { } tap ? new(tap, AmpsAt(part, tap)) : null;
    }

    private static double? AmpsAt(MotorSpec part, VoltTap tap) => Ratings.Of(part).Rows
        .Where(row => row.Volts is { } volts && VoltTap.Of(volts) == tap && row.FullLoadAmps is not null)
        .Max(row => (double?)Rounded.To(Math.Max(row.FullLoadAmps!.Value.First.Amperes, row.FullLoadAmps.Value.Last.Amperes), 3));
}
