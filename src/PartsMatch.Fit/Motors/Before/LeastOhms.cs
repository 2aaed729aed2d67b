using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>What a winding of a motor has at least, told from the impedance that its plate's volts and amps leave it when the rotor stands still.</summary>
/// <remarks>
/// A winding's ohms are a share of that impedance: the smaller the motor and the worse its efficiency, the greater. It is taken at the lowest of its voltages, where two halves of a winding
/// lie beside each other, and at the speed that takes most, so that no other way to connect or to measure it has less.
/// </remarks>
/// <param name="Sound">From so many ohms on it is as a sound one's, Ω.</param>
/// <param name="Shorted">Under so many no sound one is, Ω.</param>
public readonly record struct LeastOhms(double Sound, double Shorted)
{
    // The winding's copper makes 15 to 60 % of a motor's losses, and frozen it has two thirds of its ohms when hot. That leaves a three-phase motor of 95 % efficiency 1.1 % of the impedance
    // at the very least, a split-capacitor one of 77 % 2.8 %, and the others of a single phase, at 87 %, as much.
    private const double ShortedShareOfThree = 0.01;
    private const double ShortedShareOfSingle = 0.02;
    private const double SoundShareOfThree = 0.05;
    private const double SoundShareOfSingle = 0.1;
    private const double UsualTimesOfSlow = 3;

    /// <summary>The limits of a motor; null when its plate's volts or amps are not known.</summary>
    /// <param name="motor">The motor.</param>
    /// <param name="hasThreePhases">Whether it is a three-phase motor.</param>
    public static LeastOhms? Of(MotorSpec motor, bool hasThreePhases)
    {
        var rows = Ratings.Of(motor).Rows.Where(row => row.Volts is not null).ToList();
        var (fullLoad, locked) = (VoltAmps(rows, row => row.FullLoadAmps), VoltAmps(rows, row => row.LockedRotorAmps));
        if ((locked ?? fullLoad) is not > 0) return null;
        var volts = rows.Min(row => VoltTap.Of(row.Volts!.Value).Low);
        var impedance = volts * volts / Math.Max(locked ?? LockedTimes(motor.Type) * fullLoad ?? 0, fullLoad ?? 0);
        return hasThreePhases ? new(impedance * SoundShareOfThree, impedance * ShortedShareOfThree) : new(impedance * SoundShareOfSingle, impedance * ShortedShareOfSingle);
    }

    private static double? VoltAmps(List<Rating> rows, Func<Rating, Spread<ElectricCurrent>?> amps) =>
        rows.Max(row => amps(row) is { } ends ? VoltTap.Of(row.Volts!.Value).High * Math.Max(ends.First.Amperes, ends.Last.Amperes) : (double?)null);

    /// <summary>Locked-rotor amps over full-load amps where the plate does not give them: what is usual (practice).</summary>
    private static double LockedTimes(MotorType? type) => type is MotorType.ShadedPole or MotorType.PermanentSplitCapacitor ? UsualTimesOfSlow : CircuitDevice.LockedRotorTimes;
}
