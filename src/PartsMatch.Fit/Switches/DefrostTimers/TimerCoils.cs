using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Switches.DefrostTimers;

/// <summary>What feeds a timer's clock or release solenoid: what was measured, or else all that the old one was marked for.</summary>
/// <param name="Volts">Volts there, V; null when not known.</param>
/// <param name="Hertz">Frequency there, Hz; null when not known.</param>
/// <param name="Old">What the old one was marked for; empty when not known.</param>
internal sealed record TimerFeed(double? Volts, double? Hertz, Sequence<CoilMade> Old)
{
    /// <summary>Reads it of a need's figures.</summary>
    public static TimerFeed Of(ElectricPotential? volts, Frequency? hertz, Taps? old, Figures<Frequency>? oldHertz) => new(Rounded.Volts(volts), Rounded.Hertz(hertz), TimerCoils.Of(old, oldHertz).Own);
}

/// <summary>A timer's clock and release solenoid on what feeds them.</summary>
internal static class TimerCoils
{
    /// <summary>A clock motor keeps its torque within a tenth of its volts (practice).</summary>
    public static CoilWindow Clock { get; } = new(0.9, 1.1, 1.1);

    /// <summary>A solenoid pulls from 85 % of its volts, as a contactor's coil does (practice).</summary>
    public static CoilWindow Release { get; } = new(0.85, 1.1, 1.1);

    /// <summary>What the volts and frequencies of a clock or solenoid are as a facet.</summary>
    public static CoilFacet Of(Taps? volts, Figures<Frequency>? hertz) => CoilFacet.Of(volts, CoilCurrent.Alternating, hertz, null);

    /// <summary>The answer of an aspect. One made for two voltages is connected for one of them: a change.</summary>
    public static Finding Judge(CoilFacet facet, TimerFeed feed, CoilWindow window, CoilNames names, ChangeKind connect)
    {
        var found = OnFeed(facet, feed, window, names);
        if (found.Verdict != Verdict.Meets || facet.Own.Count < 2) return found;
        var right = feed.Volts is { } volts ? facet.Own.First(coil => CoilOnSupply.FitsVolts(coil, volts, window)) : (CoilMade?)null;
        return found.With([new(connect, right is { } coil ? $"connect its {names.Noun} for {coil}" : (FormattableString)$"connect its {names.Noun} for the volts there, which are to be measured")]);
    }

    private static Finding OnFeed(CoilFacet facet, TimerFeed feed, CoilWindow window, CoilNames names)
    {
        if (feed.Volts is not null || feed.Old.Count == 0) return CoilOnSupply.Judge(facet, new(feed.Volts, feed.Hertz, CoilCurrent.Alternating), window, names, null);
        Finding? worst = null;
        foreach (var old in feed.Old.AsSpan())
        {
            foreach (var volts in new Band(old.Low, old.High).Ends.AsSpan())
            {
                var found = CoilOnSupply.Judge(facet, new(volts, feed.Hertz, CoilCurrent.Alternating), window, names, null);
                if (found.Verdict == Verdict.Unknown) return found;
                if (worst is not null && worst.Verdict != found.Verdict) return Finding.Unknown(Side.Site, names.SiteVolts, $"Its {names.Noun} is for {new Listed(facet.Own)}, the old one's for {new Listed(feed.Old)}; which volts are there is not known.");
                if (worst is null || found.Shortfall > worst.Shortfall) worst = found;
            }
        }

        return worst!.Verdict == Verdict.Fails
            ? Finding.Fails($"Its {names.Noun}, {new Listed(facet.Own)}, takes nothing that the old one's, {new Listed(feed.Old)}, could be fed.")
            : Finding.Meets($"Its {names.Noun}, {new Listed(facet.Own)}, takes all that the old one's, {new Listed(feed.Old)}, could be fed.") with { Shortfall = worst.Shortfall };
    }

    private readonly record struct Listed(Sequence<CoilMade> Coils)
    {
        public override string ToString() => string.Join(" or ", Coils.Select(coil => coil.ToString()));
    }
}
