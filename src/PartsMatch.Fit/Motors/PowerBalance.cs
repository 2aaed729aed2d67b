using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Motors;

/// <summary>What a plate's power in, power out and efficiency say of one another.</summary>
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

    /// <summary>Below this a ratio is a slip rather than a motor: the least of any type's.</summary>
    private static double Least => TypeBands.All.Min(type => type.Efficiency.Low);

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
