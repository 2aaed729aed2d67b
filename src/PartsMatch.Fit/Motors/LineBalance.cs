using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace PartsMatch.Fit.Motors;

/// <summary>What a plate's power says beside its volts, amps and cos φ.</summary>
internal static class LineBalance
{
    /// <summary>Watts that are V·A·cos φ are from the line; watts that are less by as much as the type wastes are at the shaft. Of two voltages beside one figure of amps only one is its own: what is neither at the other is no matter.</summary>
    public static IEnumerable<Deduction> Meaning(MotorSpec spec)
    {
        if (spec is not { PowerMeaning: null, Power: { } power } || power.Any(one => one.Unit is PowerUnit.ElectricalHorsepower)) yield break;
        var meanings = Ratings.Of(spec).Rows.Select(row => (Line: LineWatts.Of(spec, row), row.Power)).Where(row => row is { Line: not null, Power: not null })
            .Select(row => Meaning(spec, row.Line!.Value, (double)row.Power!.Value.Watts)).OfType<PowerMeaning>().Distinct().ToList();
        if (meanings is not [var meaning]) yield break;
        var because = meaning == PowerMeaning.Input ? "volts, amps and power factor come to the same watts" : "volts, amps and power factor come to more, by what such a motor wastes";
        yield return new(Side.Plate, "powerMeaning", Deducing.Text(meaning), because, ["power", "voltage", "fullLoadAmps", "powerFactor"], MotorSources.LineWatts);
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
    private static List<(Power Power, List<Band> Lines)> LinesOf(MotorSpec spec) => Spec.Once(spec, FindLines);

    private static List<(Power Power, List<Band> Lines)> FindLines(MotorSpec spec) => spec.PowerFactor is null ? [] :
    [
        .. Ratings.Of(spec).Rows.Where(row => row.Power is not null).GroupBy(row => (row.Power, row.Speed))
            .Select(rows => (rows.Key.Power!.Value, Lines: rows.Select(row => LineWatts.Of(spec, row)).OfType<Band>().ToList())).Where(one => one.Lines.Count > 0),
    ];

    private static PowerMeaning? Meaning(MotorSpec spec, Band line, double watts) =>
        MayBe(spec, PowerMeaning.Input, line, watts) ? PowerMeaning.Input : MayBe(spec, PowerMeaning.Output, line, watts) ? PowerMeaning.Output : null;

    private static bool MayBe(MotorSpec spec, PowerMeaning? meaning, Band line, double watts) => meaning switch
    {
        PowerMeaning.Input => LineWatts.Are(line, watts),
        PowerMeaning.Output => (TypeBands.Likely(spec).PossibleEfficiency * line).Holds(watts),
        _ => false,
    };
}
