using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Motors;

/// <summary>Which of a plate's amps belong to which tap and speed.</summary>
internal sealed class AmpsPairing
{
    /// <summary>Twice the volts take half the amps; plates differ from that by less than this.</summary>
    private const double InverseWithin = 0.15;

    private readonly Func<int, int, Spread<ElectricCurrent>?> at;

    private AmpsPairing(Func<int, int, Spread<ElectricCurrent>?> at, bool isUnpaired = false) => (this.at, IsUnpaired) = (at, isUnpaired);

    /// <summary>Whether the figures pair with nothing.</summary>
    public bool IsUnpaired { get; }

    /// <summary>The amps at a tap and a speed row, counted from 0; null when unknown.</summary>
    public Spread<ElectricCurrent>? At(int tap, int row) => at(tap, row);

    /// <summary>Pairs amps with taps and speed rows by their counts.</summary>
    public static AmpsPairing Of(Amps? amps, Taps? taps, int rows)
    {
        var tapCount = taps?.Count ?? 1;
        if (amps is null) return new((_, _) => null);
        if (amps.Count == 1) return new((_, _) => amps[0]);

        // As many taps as speeds, and as many amps: half the amps at twice the volts tell that they go with the taps.
        if (amps.Count == tapCount && taps is not null && (tapCount != rows || FallAsVoltsRise(amps, taps))) return new((tap, _) => amps[tap]);
        if (amps.Count == rows) return new((_, row) => amps[row]);
        if (amps.Count == tapCount * rows) return new((tap, row) => amps[(tap * rows) + row]);
        return taps is not null && amps.Count == Ends(taps) && amps.All(one => !one.HasTwoEnds)
            ? new((tap, _) => AtEnds(amps, taps, tap))
            : new((_, _) => null, isUnpaired: true);
    }

    /// <summary>How many figures of volts stand there when both ends of a span count.</summary>
    private static int Ends(IEnumerable<Spread<ElectricPotential>> taps) => taps.Sum(tap => tap.HasTwoEnds ? 2 : 1);

    private static Spread<ElectricCurrent> AtEnds(Amps amps, Taps taps, int tap)
    {
        var first = Ends(taps.Take(tap));
        return new(amps[first].First, amps[taps[tap].HasTwoEnds ? first + 1 : first].First);
    }

    private static bool FallAsVoltsRise(Amps amps, Taps taps) =>
        Enumerable.Range(1, taps.Count - 1).All(tap => Within.Ratio(
            amps[tap].First.Amperes * taps[tap].First.Volts,
            amps[0].First.Amperes * taps[0].First.Volts,
            1 + InverseWithin));
}
