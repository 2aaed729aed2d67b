using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace PartsMatch.Fit.Motors;

/// <summary>What a plate's power in, power out, volts, amps and cos φ say of one another.</summary>
public static class PowerBalance
{
    /// <summary>The types' bands are of common motors and mostly from memory: so far beyond them a motor may still lie.</summary>
    private const double BeyondBand = 0.1;

    /// <summary>An efficiency on the plate and output over input are the same within so much, as a ratio (practice: figures are rounded).</summary>
    private const double SameEfficiency = 1.05;

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
            else if (!Within.Span(share.Value, type.Efficiency.Low * (1 - BeyondBand), type.Efficiency.High * (1 + BeyondBand)))
            {
                yield return new(
                    ["power", "inputPower", "type"],
                    FormattableString.Invariant($"{share.Out} of {share.In} is an efficiency of {share.Value * 100:0} %, where {(spec.Type is { } known ? MotorKinds.Some(known) : "any type of motor that it may be")} has {type.Efficiency.Low * 100:0} to {type.Efficiency.High * 100:0} %: one of the figures may be misread."),
                    type.Source);
            }
            else if (spec.Efficiency is { } read && !Within.Ratio(share.Value, read.DecimalFractions, SameEfficiency))
            {
                yield return new(["power", "inputPower", "efficiency"], FormattableString.Invariant($"{share.Out} of {share.In} is an efficiency of {share.Value * 100:0} %, but the plate says {Deducing.Text(read)}."), MotorSources.Efficiency);
            }
        }
    }

    /// <summary>An efficiency that no motor of the type has.</summary>
    public static IEnumerable<Contradiction> OfEfficiency(MotorSpec spec)
    {
        if (spec.Efficiency is not { } read || InAndOut(spec).Any()) yield break;
        var band = TypeBands.Likely(spec);
        if (Within.Span(read.DecimalFractions, band.Efficiency.Low * (1 - BeyondBand), Math.Min(band.Efficiency.High * (1 + BeyondBand), 1))) yield break;
        yield return new(
            spec.Type is null ? ["efficiency"] : ["type", "efficiency"],
            FormattableString.Invariant($"The plate says {Deducing.Text(read)} efficiency, where {(spec.Type is { } known ? MotorKinds.Some(known) : "any type of motor that it may be")} has {band.Efficiency.Low * 100:0} to {band.Efficiency.High * 100:0} %: it may be misread."),
            band.Source);
    }

    /// <summary>Watts beyond V·A·cos φ: at the shaft none can be, from the line only what rounding explains. Below them they are what the type wastes of them less.</summary>
    public static IEnumerable<Contradiction> OfPowerFactor(MotorSpec spec)
    {
        // One figure of amps beside two voltages belongs to one of them: the greater product is the limit.
        foreach (var rows in Ratings.Of(spec).Rows.GroupBy(row => (row.Power, row.Speed)))
        {
            if (rows.Key.Power is not { } power || rows.Select(row => LineWatts.Of(spec, row)).OfType<Band>().ToList() is not { Count: > 0 } lines) continue;
            var (most, atShaft) = (lines.Max(line => line.High), spec.PowerMeaning == PowerMeaning.Output);
            if (!Within.AtMost((double)power.Watts, most * (atShaft ? 1 : 1 + LineWatts.Rounding)))
            {
                yield return new(
                    ["power", "voltage", "fullLoadAmps", "powerFactor"],
                    FormattableString.Invariant($"{Deducing.Text(power)}{(atShaft ? " at the shaft" : string.Empty)} is more than the {most:0} W that volts, amps and a power factor of {spec.PowerFactor:0.##} come to: a motor gives no more than it takes."),
                    MotorSources.LineWatts);
                yield break;
            }

            if (lines.Exists(line => Meaning(spec, line, (double)power.Watts) is not null)) continue;
            yield return new(
                ["type", "power", "voltage", "fullLoadAmps", "powerFactor"],
                FormattableString.Invariant($"{Deducing.Text(power)} is neither the {most:0} W that volts, amps and a power factor of {spec.PowerFactor:0.##} come to nor what {(spec.Type is { } known ? MotorKinds.Some(known) : "any type of motor that it may be")} gives at the shaft for them."),
                TypeBands.Likely(spec).Source);
            yield break;
        }
    }

    /// <summary>Below this a ratio is a slip rather than a motor: the least of any type's.</summary>
    private static double Least => TypeBands.All.Min(type => type.Efficiency.Low);

    private static PowerMeaning? Meaning(MotorSpec spec, Band line, double watts)
    {
        if (LineWatts.Are(line, watts)) return PowerMeaning.Input;
        var given = TypeBands.Likely(spec).Efficiency * line;
        return Within.Span(watts, given.Low * (1 - BeyondBand), Math.Min(given.High * (1 + BeyondBand), line.High)) ? PowerMeaning.Output : null;
    }

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
    }
}
