using PartsMatch.Demo.Motors.Tables;
using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Demo.Motors;

/// <summary>Puts amps, locked-rotor amps, code letter, efficiency, power factor and run capacitor on a motor, from its type's published bands.</summary>
public static class Electrics
{
    private const double Sqrt3 = 1.7320508075688772;

    /// <summary>Fills them in; two makers' parts of one design differ by a few percent.</summary>
    public static MotorSpec Fill(MotorSpec spec, double goodness, Draw draw)
    {
        var type = spec.Type!.Value;
        var rows = Rows(spec);
        var band = Efficiency.Of(type, ShaftWatts(spec), spec.Poles ?? 4, spec.Standard!.Value);
        var efficiency = Math.Round(band.At(goodness + draw.Between(-0.12, 0.12)), 3);
        var powerFactor = Math.Round(Efficiency.PowerFactorOf(type).At(draw.Between(0, 1)), 2);
        var bothEnds = draw.Chance(0.35);

        // Lower speeds run less well; other taps of the same speed run the same.
        var loss = spec.Speeds > 1 && spec.Power!.Count > 1 ? 0.02 : 0;
        var amps = Enumerable.Range(0, rows).Select(row => RowAmps(spec, row, Math.Max(band.Low, efficiency - (loss * row)), powerFactor, bothEnds)).ToList();
        var filled = spec with { FullLoadAmps = new(amps), RunCapacitor = Capacitor(spec, draw) };
        if (type == MotorType.ThreePhaseInduction) filled = filled with { Efficiency = Ratio.FromPercent(Math.Round(efficiency * 100, 1)), PowerFactor = powerFactor };
        return WithLockedRotor(filled, draw);
    }

    /// <summary>How many rating rows the plate has: the most figures that stand side by side.</summary>
    private static int Rows(MotorSpec spec) => new[] { spec.Power!.Count, spec.Speed!.Count, spec.Voltage!.Count, spec.Frequency!.Count }.Max();

    /// <summary>Shaft watts at high speed; input watts are first put through the type's efficiency.</summary>
    private static double ShaftWatts(MotorSpec spec)
    {
        var watts = spec.Power!.WattsOf();
        return spec.PowerMeaning == PowerMeaning.Input ? watts * Efficiency.Of(spec.Type!.Value, watts, spec.Poles ?? 4, spec.Standard!.Value).At(0.5) : watts;
    }

    private static Spread<ElectricCurrent> RowAmps(MotorSpec spec, int row, double efficiency, double powerFactor, bool bothEnds)
    {
        var inputWatts = spec.Power!.WattsOf(row) / (spec.PowerMeaning == PowerMeaning.Input ? 1 : efficiency);
        var volts = spec.Voltage!.Of(row);

        // Volts far apart (100 to 240 V) always have the amps of both ends; of 208-230 V most plates print those at 230 V.
        var isWide = volts.Last.Volts > 1.25 * volts.First.Volts;
        ElectricCurrent At(ElectricPotential end) => ElectricCurrent.FromAmperes(Plate(inputWatts / (powerFactor * end.Volts * (spec.Phase == Phases.Three ? Sqrt3 : 1))));
        return volts.HasTwoEnds && (bothEnds || isWide) ? new(At(volts.First), At(volts.Last)) : new(At(volts.Last));
    }

    /// <summary>Rounds as plates do: two digits behind the point under 1 A, one above.</summary>
    private static double Plate(double amps) => Math.Max(0.01, Math.Round(amps, amps < 1 ? 2 : 1));

    private static CapacitorRating Capacitor(MotorSpec spec, Draw draw)
    {
        if (spec.Type is not (MotorType.PermanentSplitCapacitor or MotorType.CapacitorStartCapacitorRun)) return CapacitorRating.None;
        var microfarads = draw.Pick(RunCapacitors.Microfarads(ShaftWatts(spec), spec.Voltage![0].First.Volts));
        var volts = spec.Standard == PlateStandard.Iec ? draw.Of((450, 3), (400, 2)) : draw.Of((370, 7), (440, 3));
        return new(ElectricCapacitance.FromMicrofarads(microfarads), ElectricPotential.FromVolts(volts));
    }

    private static MotorSpec WithLockedRotor(MotorSpec spec, Draw draw) => spec.Type switch
    {
        // Electronics limit the current at standstill.
        MotorType.ElectronicallyCommutated => spec,
        MotorType.ShadedPole => spec with { LockedRotorAmps = Times(spec.FullLoadAmps!, draw.Between(1.3, 1.9)) },
        MotorType.PermanentSplitCapacitor => spec with { LockedRotorAmps = Times(spec.FullLoadAmps!, draw.Between(1.8, 3.0)) },
        MotorType.ThreePhaseInduction when spec.Standard == PlateStandard.Iec => spec with { LockedRotorAmps = Times(spec.FullLoadAmps!, draw.Between(3.2, 5.8)) },
        _ => WithCodeLetter(spec, draw),
    };

    private static Figures<Spread<ElectricCurrent>> Times(Figures<Spread<ElectricCurrent>> amps, double factor) =>
        new(amps.Select(row => new Spread<ElectricCurrent>(ElectricCurrent.FromAmperes(Plate(row.Last.Amperes * factor)))));

    /// <summary>Small motors need more kVA a horsepower at standstill than large ones (practice); the letter follows from the amps as printed.</summary>
    private static MotorSpec WithCodeLetter(MotorSpec spec, Draw draw)
    {
        var hp = spec.Power!.Horsepower();
        var kilovoltAmperes = hp * draw.Between(0.93, 1.07) * hp switch { < 0.4 => 11, < 0.9 => 9.6, < 1.3 => 8.6, < 2.5 => 7.6, _ => 6.6 };
        var root = spec.Phase == Phases.Three ? Sqrt3 : 1;
        var tapped = spec.Voltage!.Count > 1;
        var amps = Enumerable.Range(0, tapped ? spec.Voltage.Count : spec.FullLoadAmps!.Count)
            .Select(row => Math.Round(kilovoltAmperes * 1000 * spec.Power!.WattsOf(row) / spec.Power!.WattsOf() / (root * spec.Voltage.Of(row).Last.Volts), 1)).ToList();
        return spec with
        {
            LockedRotorAmps = new(amps.Select(each => new Spread<ElectricCurrent>(ElectricCurrent.FromAmperes(each)))),
            CodeLetter = LockedRotorLetters.Of(amps[0] * root * spec.Voltage.Of(0).Last.Volts / 1000 / hp),
        };
    }
}
