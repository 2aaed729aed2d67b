using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace PartsMatch.Fit.Motors;

/// <summary>What a plate's power in, power out, volts, amps and cos φ say of one another.</summary>
public static class PowerBalance
{
    /// <summary>An efficiency on the plate and output over input are the same within so much, as a ratio (practice: figures are rounded).</summary>
    private const double SameEfficiency = 1.05;

    /// <summary>Beside what it takes the plate gives what comes out, unless both are the same figure.</summary>
    public static IEnumerable<Deduction> MeaningBesideInput(MotorSpec spec)
    {
        if (Shares(spec).Select(MeaningOf).Distinct().ToList() is not [{ } meaning]) yield break;
        var because = meaning == PowerMeaning.Input ? "the plate gives the same watts as what it takes" : "the plate gives more watts for what it takes";
        yield return new(Side.Plate, "powerMeaning", Deducing.Text(meaning), because, ["power", "inputPower"], MotorSources.LineWatts);
    }

    /// <summary>Watts that are V·A·cos φ are from the line; watts that are less by as much as the type wastes are at the shaft. Of two voltages beside one figure of amps only one is its own: what is neither at the other is no matter.</summary>
    public static IEnumerable<Deduction> Meaning(MotorSpec spec)
    {
        if (spec.Power is not { } power || power.Any(one => one.Unit is PowerUnit.ElectricalHorsepower)) yield break;
        var meanings = Ratings.Of(spec).Rows.Select(row => (Line: LineWatts.Of(spec, row), row.Power)).Where(row => row is { Line: not null, Power: not null })
            .Select(row => Meaning(spec, row.Line!.Value, (double)row.Power!.Value.Watts)).OfType<PowerMeaning>().Distinct().ToList();
        if (meanings is not [var meaning]) yield break;
        var because = meaning == PowerMeaning.Input ? "volts, amps and power factor come to the same watts" : "volts, amps and power factor come to more, by what such a motor wastes";
        yield return new(Side.Plate, "powerMeaning", Deducing.Text(meaning), because, ["power", "voltage", "fullLoadAmps", "powerFactor"], MotorSources.LineWatts);
    }

    /// <summary>Output over input, where the plate gives one of each.</summary>
    public static IEnumerable<Deduction> Efficiency(MotorSpec spec)
    {
        if (Shares(spec) is not [{ IsPossible: true } share] || !Within.AtLeast(share.Value, Least)) yield break;
        yield return new(Side.Plate, "efficiency", Deducing.Text(Ratio.FromPercent(Rounded.To(share.Value * 100, 1))), $"the plate gives {Deducing.Text(spec.Power!)} at the shaft and {Deducing.Text(spec.InputPower!)} from the line", ["power", "inputPower"], MotorSources.Efficiency);
    }

    /// <summary>Neither what a motor gives nor what it takes is more than its volt-amperes.</summary>
    public static IEnumerable<Contradiction> OfAmps(MotorSpec spec)
    {
        // With the phases unknown the larger product is the limit, so that nothing possible is called impossible.
        var phases = spec.Phase == Phases.Single ? 1 : Math.Sqrt(3);
        foreach (var row in Ratings.Of(spec).Rows)
        {
            if (row is not { Power: { } power, Volts: { } volts, FullLoadAmps: { } amps }) continue;
            var most = phases * Math.Max(Math.Max(volts.First.Volts * amps.First.Amperes, volts.Last.Volts * amps.Last.Amperes), amps.HasTwoEnds ? 0 : volts.Last.Volts * amps.First.Amperes);
            if (Within.AtMost((double)power.Watts, most)) continue;
            yield return new(
                ["power", "voltage", "fullLoadAmps"],
                FormattableString.Invariant($"{Deducing.Text(power)}{(spec.PowerMeaning == PowerMeaning.Output ? " at the shaft" : string.Empty)} is {power.Watts:0} W, more than the {most:0} VA of {Deducing.Text(new Taps(volts))} and {Deducing.Text(new Amps(amps))}."),
                MotorSources.Energy);
        }
    }

    /// <summary>More out than in, an efficiency that no motor of the type has, or another than the plate's own.</summary>
    public static IEnumerable<Contradiction> InAndOut(MotorSpec spec)
    {
        var type = TypeBands.Likely(spec);
        foreach (var share in Shares(spec))
        {
            if (!share.IsPossible)
            {
                yield return new(["power", "inputPower"], $"{share.Out} at the shaft is not less than the {share.In} from the line: a motor gives less than it takes. One of the two may be misread, or they are changed over.", MotorSources.Energy);
            }
            else if (!type.PossibleEfficiency.Holds(share.Value))
            {
                yield return new(
                    ["power", "inputPower", "type"],
                    FormattableString.Invariant($"{share.Out} of {share.In} is an efficiency of {share.Value * 100:0} %, where {(spec.Type is { } known ? MotorKinds.Some(known) : "any type of motor that it may be")} has {type.Efficiency.Low * 100:0} to {type.Efficiency.High * 100:0} %: one of the figures may be misread."),
                    type.Source);
            }
            else if (spec.Efficiency is { } read && !share.Is(read))
            {
                yield return new(["power", "inputPower", "efficiency"], FormattableString.Invariant($"{share.Out} of {share.In} is an efficiency of {share.Value * 100:0} %, but the plate says {Deducing.Text(read)}."), MotorSources.Efficiency);
            }
        }
    }

    /// <summary>Two figures of what it takes that are not the same.</summary>
    public static IEnumerable<Contradiction> InTwice(MotorSpec spec)
    {
        if (spec.PowerMeaning != PowerMeaning.Input || !Shares(spec with { PowerMeaning = null }).Exists(share => MeaningOf(share) != PowerMeaning.Input)) yield break;
        yield return new(["power", "powerMeaning", "inputPower"], $"{Deducing.Text(spec.Power!)} is said to be from the line, but {Deducing.Text(spec.InputPower!)} is what it takes: one of the two may be what comes out.", MotorSources.LineWatts);
    }

    /// <summary>An efficiency that no motor of the type has, unless power in and out have said so.</summary>
    public static IEnumerable<Contradiction> OfEfficiency(MotorSpec spec)
    {
        if (spec.Efficiency is not { } read || InAndOut(spec).Any(one => one.Fields.Contains("efficiency") || Shares(spec).Exists(share => share.Is(read)))) yield break;
        var band = TypeBands.Likely(spec);
        if (band.PossibleEfficiency.Holds(read.DecimalFractions)) yield break;
        yield return new(
            spec.Type is null ? ["efficiency"] : ["type", "efficiency"],
            FormattableString.Invariant($"The plate says {Deducing.Text(read)} efficiency, where {(spec.Type is { } known ? MotorKinds.Some(known) : "any type of motor that it may be")} has {band.Efficiency.Low * 100:0} to {band.Efficiency.High * 100:0} %: it may be misread."),
            band.Source);
    }

    /// <summary>Watts beyond V·A·cos φ: at the shaft none can be, from the line only what rounding explains.</summary>
    public static IEnumerable<Contradiction> OverPowerFactor(MotorSpec spec)
    {
        var atShaft = spec.PowerMeaning == PowerMeaning.Output;
        foreach (var (power, lines) in LinesOf(spec))
        {
            var most = lines.Max(line => line.High);
            if (Within.AtMost((double)power.Watts, most * (atShaft ? 1 : 1 + LineWatts.Rounding))) continue;
            yield return new(
                ["power", "voltage", "fullLoadAmps", "powerFactor"],
                FormattableString.Invariant($"{Deducing.Text(power)}{(atShaft ? " at the shaft" : string.Empty)} is more than the {most:0} W that volts, amps and a power factor of {spec.PowerFactor:0.##} come to: a motor gives no more than it takes."),
                MotorSources.LineWatts);
            yield break;
        }
    }

    /// <summary>Watts below V·A·cos φ are what the type wastes of them less; what the plate calls input is not less, and what it calls output is.</summary>
    public static IEnumerable<Contradiction> OfPowerFactor(MotorSpec spec)
    {
        foreach (var (power, lines) in LinesOf(spec))
        {
            if (lines.Exists(line => MayBe(spec, spec.PowerMeaning ?? Meaning(spec, line, (double)power.Watts), line, (double)power.Watts))) continue;
            var line = FormattableString.Invariant($"{lines.Max(line => line.High):0} W that volts, amps and a power factor of {spec.PowerFactor:0.##} come to");
            var given = $"what {(spec.Type is { } known ? MotorKinds.Some(known) : "any type of motor that it may be")} gives at the shaft";
            yield return new(
                ["type", "power", "voltage", "fullLoadAmps", "powerFactor"],
                spec.PowerMeaning switch
                {
                    PowerMeaning.Input => $"{Deducing.Text(power)} from the line is not the {line}.",
                    PowerMeaning.Output => $"{Deducing.Text(power)} at the shaft is not {given} of the {line}.",
                    _ => $"{Deducing.Text(power)} is neither the {line} nor {given} for them.",
                },
                TypeBands.Likely(spec).Source);
            yield break;
        }
    }

    /// <summary>Each power with the watts from the line that stand beside it. One figure of amps beside two voltages belongs to one of them: all that are possible stand there.</summary>
    private static IEnumerable<(Power Power, List<Band> Lines)> LinesOf(MotorSpec spec)
    {
        foreach (var rows in Ratings.Of(spec).Rows.GroupBy(row => (row.Power, row.Speed)))
        {
            if (rows.Key.Power is { } power && rows.Select(row => LineWatts.Of(spec, row)).OfType<Band>().ToList() is { Count: > 0 } lines) yield return (power, lines);
        }
    }

    /// <summary>Below this a ratio is a slip rather than a motor: the least of any type's.</summary>
    private static double Least => TypeBands.All.Min(type => type.Efficiency.Low);

    private static PowerMeaning? Meaning(MotorSpec spec, Band line, double watts) =>
        MayBe(spec, PowerMeaning.Input, line, watts) ? PowerMeaning.Input : MayBe(spec, PowerMeaning.Output, line, watts) ? PowerMeaning.Output : null;

    private static bool MayBe(MotorSpec spec, PowerMeaning? meaning, Band line, double watts) => meaning switch
    {
        PowerMeaning.Input => LineWatts.Are(line, watts),
        PowerMeaning.Output => (TypeBands.Likely(spec).PossibleEfficiency * line).Holds(watts),
        _ => false,
    };

    /// <summary>What a power is beside what the motor takes; null for more than that.</summary>
    private static PowerMeaning? MeaningOf(Share share) =>
        Within.Ratio(share.Value, 1, 1 + LineWatts.Rounding) ? PowerMeaning.Input : share.IsPossible ? PowerMeaning.Output : null;

    /// <summary>Output over input of each row; none where the plate's power is itself the input, or the counts differ.</summary>
    private static List<Share> Shares(MotorSpec spec)
    {
        if (spec is not { Power: { } power, InputPower: { } input } || spec.PowerMeaning == PowerMeaning.Input || (input.Count > 1 && input.Count != power.Count)) return [];
        return [.. power.Select((one, row) => new Share(one, input.Of(row))).DistinctBy(share => (share.Out, share.In))];
    }

    private readonly record struct Share(Power OutPower, Power InPower)
    {
        public string Out => Deducing.Text(OutPower);

        public string In => Deducing.Text(InPower);

        public double Value => (double)(OutPower.Watts / InPower.Watts);

        public bool IsPossible => Value < 1;

        public bool Is(Ratio efficiency) => Within.Ratio(Value, efficiency.DecimalFractions, SameEfficiency);
    }
}
