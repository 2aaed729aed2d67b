using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Motors;

/// <summary>One rating row: what belongs together at one tap and one speed. Null is unknown.</summary>
/// <param name="SpeedRow">Its place among the plate's speeds and powers, from 0, in the order of the plate; every tap has each of them.</param>
/// <param name="Volts">The tap.</param>
/// <param name="Frequencies">The frequencies that the row holds at; empty when unknown.</param>
/// <param name="Power">Power.</param>
/// <param name="Speed">Full-load speed.</param>
/// <param name="FullLoadAmps">Full-load amps; two ends beside a span of volts are those at its ends.</param>
/// <param name="LockedRotorAmps">Locked-rotor amps, likewise.</param>
public sealed record Rating(
    int SpeedRow,
    Spread<ElectricPotential>? Volts,
    IReadOnlyList<Frequency> Frequencies,
    Power? Power,
    RotationalSpeed? Speed,
    Spread<ElectricCurrent>? FullLoadAmps,
    Spread<ElectricCurrent>? LockedRotorAmps);

/// <summary>A motor's rating rows: what runs parallel on a plate, zipped by position.</summary>
/// <remarks>
/// A single figure stands for every row. Speeds and powers pair with one another; frequencies join them when both step alike (50/60 Hz beside 1425/1725 rpm).
/// Every tap has every speed. Amps pair with the taps, with the speeds, or with both; two amps beside one span of volts are its ends.
/// </remarks>
public sealed class Ratings
{
    private Ratings(IReadOnlyList<Rating> rows, IReadOnlyList<string> unpaired) => (Rows, Unpaired) = (rows, unpaired);

    /// <summary>The rows, tap by tap, and at each tap speed by speed; one row of unknowns when nothing is known.</summary>
    public IReadOnlyList<Rating> Rows { get; }

    /// <summary>The fields whose figures pair with nothing: their counts contradict the others.</summary>
    public IReadOnlyList<string> Unpaired { get; }

    /// <summary>The rating rows of a spec.</summary>
    public static Ratings Of(MotorSpec spec) => Spec.Once(spec, Zipped);

    private static Ratings Zipped(MotorSpec spec)
    {
        var speedRows = RatedSpeeds.Of(spec);
        var fullLoad = AmpsPairing.Of(spec.FullLoadAmps, spec.Voltage, speedRows.Count);
        var lockedRotor = AmpsPairing.Of(spec.LockedRotorAmps, spec.Voltage, speedRows.Count);
        var rows = new List<Rating>();
        for (var tap = 0; tap < (spec.Voltage?.Count ?? 1); tap++)
        {
            for (var row = 0; row < speedRows.Count; row++)
            {
                var at = speedRows[row];
                rows.Add(new(row, spec.Voltage?[tap], at.Frequencies, at.Power, at.Speed, fullLoad.At(tap, row), lockedRotor.At(tap, row)));
            }
        }

        List<string> unpaired = [];
        if (spec.Power is { Count: > 1 } && spec.Speed is { Count: > 1 } && spec.Power.Count != spec.Speed.Count) unpaired.Add("power");
        if (spec is { InputPower.Count: > 1 } && spec.InputPower.Count != (spec.Power?.Count ?? spec.InputPower.Count)) unpaired.Add("inputPower");
        if (fullLoad.IsUnpaired) unpaired.Add("fullLoadAmps");
        if (lockedRotor.IsUnpaired) unpaired.Add("lockedRotorAmps");
        return new(rows, unpaired);
    }
}
