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
    public static MotorAmps FullLoad(MotorSpec spec) => Of(spec, row => row.FullLoadAmps);

    /// <summary>Locked-rotor amps of a motor.</summary>
    public static MotorAmps LockedRotor(MotorSpec spec) => Of(spec, row => row.LockedRotorAmps);

    /// <summary>Any amps that follow from a rating row.</summary>
    public static MotorAmps Of(MotorSpec spec, Func<Rating, Spread<ElectricCurrent>?> amps)
    {
        var rows =
            from rating in Ratings.Of(spec).Rows
            let both = amps(rating)
            where both is not null
            from hertz in rating.Frequencies.Select(frequency => Rounded.To(frequency.Hertz, 2)).DefaultIfEmpty(double.NaN)
            group both.Value by (Tap: rating.Volts is { } volts ? VoltTap.Of(volts) : (VoltTap?)null, Hertz: hertz) into same
            select new AmpsRow(same.Key.Tap, same.Key.Hertz, Rounded.To(same.Max(one => one.First.Amperes), 3), Rounded.To(same.Max(one => one.Last.Amperes), 3));
        return new(TapsFacet.Of(spec), [.. rows]);
    }
}
