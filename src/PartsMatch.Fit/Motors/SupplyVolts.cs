using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>What volts lie between.</summary>
public enum Between
{
    /// <summary>Two lines, or whatever the two leads of the old motor were on.</summary>
    Lines,

    /// <summary>A line and the neutral.</summary>
    LineAndNeutral,
}

/// <summary>Volts that a motor can be connected to.</summary>
/// <param name="Volts">Volts, to 0.1 V.</param>
/// <param name="Between">What they lie between.</param>
public readonly record struct AvailableVolts(double Volts, Between Between);

/// <summary>The voltages at a site that a motor of so many phases can be connected to.</summary>
/// <remarks>
/// A three-phase motor gets the mean of the line-to-line readings. A single-phase one gets any of them, or line to neutral where a neutral was measured.
/// Line to neutral is 1/√3 of line to line in a star, half of it on a centre tap; a reading against neutral that is neither, such as the high leg of a
/// high-leg delta, is not offered to any motor.
/// </remarks>
public sealed class SupplyVolts
{
    /// <summary>Readings are taken one after another, and legs are loaded unevenly: a ratio counts as met within so much (practice).</summary>
    private const double RatioWithin = 0.06;

    /// <summary>The high leg stands at √3 of the other legs against neutral; nothing else stands so far over them.</summary>
    private const double HighLegOver = 1.5;

    private readonly double[] lines;
    private readonly double[] neutralRatios;
    private readonly bool neutralUnmeasured;

    private SupplyVolts(MotorSite site, Phases phases)
    {
        double[] read = [.. site.Volts?.Select(volts => Rounded.To(volts.Volts, 1)) ?? []];
        lines = phases == Phases.Three && read.Length > 0 ? [Rounded.To(read.Average(), 1)] : read;
        neutralRatios = phases == Phases.Three ? [] : RatiosOf(site.SupplyArrangement);
        neutralUnmeasured = site.NeutralVolts is null;
        double[] toNeutral = phases == Phases.Three ? [] : [.. site.NeutralVolts?.Select(volts => Rounded.To(volts.Volts, 1)) ?? []];
        var offered = toNeutral.Where(volts => IsOffered(volts, toNeutral.Min())).Distinct().ToList();
        Refused = [.. toNeutral.Except(offered)];
        Available = [.. lines.Distinct().Select(volts => new AvailableVolts(volts, Between.Lines)), .. offered.Select(volts => new AvailableVolts(volts, Between.LineAndNeutral))];
    }

    /// <summary>All of them, lines first.</summary>
    public Sequence<AvailableVolts> Available { get; }

    /// <summary>Readings against neutral that are not offered.</summary>
    public IReadOnlyList<double> Refused { get; }

    /// <summary>Whether volts between lines were measured.</summary>
    public bool LinesMeasured => lines.Length > 0;

    /// <summary>What a need's site offers.</summary>
    public static SupplyVolts Of(MotorNeed need, Phases phases) => phases == Phases.Three
        ? need.Once(static need => new SupplyVolts(need.Site, Phases.Three))
        : need.Once(static need => new SupplyVolts(need.Site, Phases.Single));

    /// <summary>The supply's frequency, Hz; null when unknown.</summary>
    public static double? HertzOf(MotorNeed need) => need.Once(static need => need.Site.SupplyFrequency?.Hertz);

    /// <summary>Whether two readings may be one voltage, read twice.</summary>
    /// <param name="volts">One, V.</param>
    /// <param name="other">The other, V.</param>
    public static bool IsAlike(double volts, double other) => Within.Ratio(volts, other, 1 + RatioWithin);

    /// <summary>Whether a neutral that nobody measured could still help a tap.</summary>
    /// <param name="tap">The tap.</param>
    /// <param name="most">How far off its volts may lie.</param>
    public bool NeutralMayHelp(VoltTap tap, double most)
    {
        if (!neutralUnmeasured) return false;
        foreach (var line in lines)
        {
            foreach (var ratio in neutralRatios)
            {
                if (Within.AtLeast(line * ratio * (1 + RatioWithin), tap.Low * (1 - most)) && Within.AtMost(line * ratio * (1 - RatioWithin), tap.High * (1 + most))) return true;
            }
        }

        return false;
    }

    /// <summary>Whether it could help any of a motor's taps.</summary>
    /// <param name="taps">The taps.</param>
    /// <param name="most">How far off its volts may lie.</param>
    public bool NeutralMayHelpAny(Sequence<VoltTap> taps, double most)
    {
        foreach (var tap in taps.AsSpan())
        {
            if (NeutralMayHelp(tap, most)) return true;
        }

        return false;
    }

    private static double[] RatiosOf(SupplyArrangement? arrangement) => arrangement switch
    {
        SupplyArrangement.Wye => [1 / Math.Sqrt(3)],
        SupplyArrangement.HighLegDelta => [0.5],
        SupplyArrangement.Delta => [],

        // Single-phase may be a centre tap, or two legs of a star: 208 V with 120 V to neutral is a common building supply.
        _ => [0.5, 1 / Math.Sqrt(3)],
    };

    private bool IsOffered(double volts, double lowest) =>
        volts < HighLegOver * lowest
        && (lines.Length == 0
            ? neutralRatios.Length > 0
            : lines.Any(line => neutralRatios.Any(ratio => Within.Span(volts / line, ratio * (1 - RatioWithin), ratio * (1 + RatioWithin)))));
}
