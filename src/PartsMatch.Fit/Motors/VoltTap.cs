using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Motors;

/// <summary>A tap in plain volts, rounded to 0.1 V: 230, or the span 208-230.</summary>
/// <param name="Low">The low end, or the only figure.</param>
/// <param name="High">The high end, or the same again.</param>
public readonly record struct VoltTap(double Low, double High)
{
    /// <summary>The least volts it takes: 10 % under its low end.</summary>
    public double Least => Low * (1 - SupplyWindows.MostVoltsOff);

    /// <summary>The most volts it takes: 10 % over its high end.</summary>
    public double Most => High * (1 + SupplyWindows.MostVoltsOff);

    /// <summary>The taps of a spec, in its order; empty when unknown.</summary>
    public static Sequence<VoltTap> Of(Taps? taps) => taps is null ? default : [.. taps.Select(Of)];

    /// <summary>The old motor's taps.</summary>
    internal static Sequence<VoltTap> OfOld(MotorNeed need) => need.OnceOfPlate(static plate => Of(plate.Voltage));

    /// <summary>One tap.</summary>
    public static VoltTap Of(Spread<ElectricPotential> tap) => new(Rounded.To(tap.First.Volts, 1), Rounded.To(tap.Last.Volts, 1));

    /// <summary>How far volts lie outside it, as a fraction of the nearer end; 0 inside a span.</summary>
    public double Off(double volts) => volts < Low ? 1 - (volts / Low) : volts > High ? (volts / High) - 1 : 0;

    /// <summary>Whether it takes these volts, with a limit on the deviation.</summary>
    public bool Takes(double volts, double most = SupplyWindows.MostVoltsOff) => Within.AtMost(Off(volts), most);

    /// <summary>Whether it shares volts with another, as 230 V does with 208-230 V.</summary>
    public bool Overlaps(VoltTap other) => Low <= other.High && other.Low <= High;

    /// <summary>Volts to the nearer limit: positive inside, negative outside.</summary>
    public double Room(double volts) => Math.Min(volts - Least, Most - volts);

    /// <inheritdoc/>
    public override string ToString() => Low < High ? FormattableString.Invariant($"{Low:0.#}-{High:0.#} V") : FormattableString.Invariant($"{Low:0.#} V");
}
