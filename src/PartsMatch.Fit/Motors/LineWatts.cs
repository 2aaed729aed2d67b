using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>What a plate's volts, amps and cos φ come to: watts from the line, V·A·cos φ, times √3 for three phases.</summary>
internal static class LineWatts
{
    /// <summary>Figures of a plate are rounded: watts within so much of V·A·cos φ are the same (practice).</summary>
    public const double Rounding = 0.05;

    /// <summary>Watts from the line at a rating row; null where a figure, the phases or the power factor is not known.</summary>
    public static Band? Of(MotorSpec spec, Rating row)
    {
        if (spec is not { Phase: { } phases, PowerFactor: { } factor } || row is not { Volts: { } volts, FullLoadAmps: { } amps }) return null;
        var share = factor * (phases == Phases.Three ? Math.Sqrt(3) : 1);

        // One figure of amps beside a span is the one at its low end or at its high end: both stay possible.
        var (one, other) = (volts.First.Volts * amps.First.Amperes * share, volts.Last.Volts * (amps.HasTwoEnds ? amps.Last : amps.First).Amperes * share);
        return new(Math.Min(one, other), Math.Max(one, other));
    }

    /// <summary>Whether watts are what the line gives, within the rounding of a plate.</summary>
    public static bool Are(Band line, double watts) => Within.Span(watts, line.Low * (1 - Rounding), line.High * (1 + Rounding));
}
