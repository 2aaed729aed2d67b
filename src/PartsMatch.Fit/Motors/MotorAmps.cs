using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.Aspects;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Motors;

/// <summary>Amps at one tap and frequency: the greatest of its speeds.</summary>
/// <param name="Tap">The tap; null when the volts are unknown.</param>
/// <param name="Hertz">The frequency in Hz; NaN when the plate does not say.</param>
/// <param name="AtLow">Amps at the tap's low end, A.</param>
/// <param name="AtHigh">Amps at its high end, A; the same again where one figure is given.</param>
public readonly record struct AmpsRow(VoltTap? Tap, double Hertz, double AtLow, double AtHigh)
{
    /// <summary>Amps at so many volts: between the ends of a span on a straight line, beyond them as at the nearer end.</summary>
    public double At(double volts) =>
        Tap is { } tap && tap.High > tap.Low
            ? AtLow + ((AtHigh - AtLow) * Math.Clamp((volts - tap.Low) / (tap.High - tap.Low), 0, 1))
            : Math.Max(AtLow, AtHigh);
}

/// <summary>A motor's amps, tap by tap, as its plate pairs them.</summary>
/// <param name="Connections">Taps and phases.</param>
/// <param name="Rows">Amps; empty when unknown.</param>
public readonly record struct MotorAmps(TapsFacet Connections, Sequence<AmpsRow> Rows)
{
    /// <summary>Full-load amps of a motor.</summary>
    public static MotorAmps FullLoad(MotorSpec spec) => Spec.Once(spec, static spec => Of(spec, row => row.FullLoadAmps));

    /// <summary>Locked-rotor amps of a motor.</summary>
    public static MotorAmps LockedRotor(MotorSpec spec) => Of(spec, row => row.LockedRotorAmps);

    /// <summary>Any amps that follow from a rating row.</summary>
    public static MotorAmps Of(MotorSpec spec, Func<Rating, Spread<ElectricCurrent>?> amps)
    {
        List<AmpsRow> rows = [];
        foreach (var rating in Ratings.Of(spec).Rows)
        {
            if (amps(rating) is not { } both) continue;
            var row = new AmpsRow(rating.Volts is { } volts ? VoltTap.Of(volts) : null, double.NaN, Rounded.To(both.First.Amperes, 3), Rounded.To(both.Last.Amperes, 3));
            if (rating.Frequencies.Count == 0) Add(row);
            foreach (var frequency in rating.Frequencies) Add(row with { Hertz = Rounded.To(frequency.Hertz, 2) });
        }

        return new(TapsFacet.Of(spec), [.. rows]);

        void Add(AmpsRow row)
        {
            var known = rows.FindIndex(one => one.Tap == row.Tap && one.Hertz.Equals(row.Hertz));
            if (known < 0) rows.Add(row);
            else rows[known] = row with { AtLow = Math.Max(row.AtLow, rows[known].AtLow), AtHigh = Math.Max(row.AtHigh, rows[known].AtHigh) };
        }
    }
}
