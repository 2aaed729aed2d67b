using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Benchmarks.Motors;

/// <summary>Makes one motor of another: what differs between two makers' motors of one design, and what catalogues leave out.</summary>
internal static class Variation
{
    /// <summary>Of so many entries one lacks the field: about as often as in the seed data.</summary>
    private static readonly (double Share, Func<MotorSpec, MotorSpec> Leave)[] Gaps =
    [
        (0.04, spec => spec with { BodyLength = null }),
        (0.04, spec => spec with { LockedRotorAmps = null, CodeLetter = null }),
        (0.04, spec => spec with { Bearings = null, ShaftPositions = null }),
        (0.03, spec => spec with { Insulation = null }),
        (0.03, spec => spec with { DrainHoles = null }),
        (0.02, spec => spec with { FlatLength = null, ShaftCanBeCut = null }),
        (0.005, spec => spec with { ShaftLength = null, FlatLength = null }),
        (0.005, spec => spec with { Rotation = null, Reversing = null }),
        (0.005, spec => spec with { BodyDiameter = null }),
        (0.005, spec => spec with { Enclosure = null }),
        (0.005, spec => spec with { FullLoadAmps = null }),
    ];

    /// <summary>Another motor of the same design, with nothing left out.</summary>
    public static MotorSpec Of(MotorSpec motor, Random random) => motor with
    {
        FullLoadAmps = Times(motor.FullLoadAmps, 0.94 + (0.12 * random.NextDouble())),
        LockedRotorAmps = Times(motor.LockedRotorAmps, 0.9 + (0.2 * random.NextDouble())),
        Speed = random.Next(5) < 2 && motor.Speed is { Count: 1 } speed ? new(RotationalSpeed.FromRevolutionsPerMinute(speed[0].RevolutionsPerMinute + (5 * random.Next(-3, 4)))) : motor.Speed,
        BreakdownTorque = random.Next(4) == 0 ? Ratio.FromPercent(random.Next(160, 300)) : motor.BreakdownTorque,
        Rotation = motor.Rotation is { } turn && random.Next(2) == 0 ? turn with { Direction = Turn.Opposite(turn.Direction) } : motor.Rotation,
        ShaftLength = motor is { ShaftCanBeCut: true, ShaftLength: { } shaft } ? shaft + Length.FromInches(0.25 * random.Next(0, 5)) : motor.ShaftLength,
        BodyLength = motor.BodyLength is { } body ? body + Length.FromInches(0.125 * random.Next(-2, 6)) : null,
    };

    /// <summary>The entry as a catalogue prints it.</summary>
    public static MotorSpec WithGaps(MotorSpec motor, Random random)
    {
        foreach (var (share, leave) in Gaps)
        {
            if (random.NextDouble() < share) motor = leave(motor);
        }

        return motor;
    }

    /// <summary>Rounded as plates do: two digits behind the point under 1 A, one above.</summary>
    private static Figures<Spread<ElectricCurrent>>? Times(Figures<Spread<ElectricCurrent>>? amps, double factor) =>
        amps is null ? null : new(amps.Select(row => new Spread<ElectricCurrent>(Times(row.First, factor), Times(row.Last, factor))));

    private static ElectricCurrent Times(ElectricCurrent amps, double factor) =>
        ElectricCurrent.FromAmperes(Math.Max(0.01, Math.Round(amps.Amperes * factor, amps.Amperes < 1 ? 2 : 1)));
}
