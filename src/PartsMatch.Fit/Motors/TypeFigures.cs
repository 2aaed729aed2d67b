using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.Running;
using PartsMatch.Fit.Published;

namespace PartsMatch.Fit.Motors;

/// <summary>What the figures of a plate say of its motor's type: the bands of efficiency and power factor of each type leave them room, or do not.</summary>
internal static class TypeFigures
{
    private static readonly Func<MotorSpec, IEnumerable<Contradiction>>[] Rules = [LineBalance.OverPowerFactor, PowerBalance.InAndOut, PowerBalance.OfEfficiency, PowerOfAmps, PowerOfFactor];

    /// <summary>Figures that the type, or no type that the motor may be, has room for: each by itself, and then all together.</summary>
    public static IEnumerable<Contradiction> Contradictions(MotorSpec spec)
    {
        foreach (var one in Rules.SelectMany(rule => rule(spec))) yield return one;
        var byType = ByType(spec);
        if (byType.Count == 0 || byType.Exists(one => one.Found.Count == 0)) yield break;
        string[] fields = [.. byType.SelectMany(one => one.Found).SelectMany(one => one.Fields).Distinct().Where(name => name != "type").OrderByDescending(name => name == "power")];
        var figures = fields.Select(name => Shape<MotorSpec>.Of.Find(name)!).Select(field => $"{InSentence.Of(field.Label)} {field.TextOf(spec)}").ToList();
        var subject = fields[0] == "power" ? $"{Deducing.Text(spec.Power!)}{Meant(spec)}" : $"The {figures[0]}";
        yield return new(["type", .. fields], $"{subject} does not go with {string.Join(", ", figures.Skip(1).DefaultIfEmpty("phases and capacitor"))}, whichever type of motor it is.", TypeBands.Likely(spec).Source);
    }

    /// <summary>The plate with each type that it may be by its phases, its capacitor and all its figures, and what follows then; without these figures where they leave none, which is a contradiction. None where the plate names its type.</summary>
    /// <param name="asRead">Before anything was deduced: what is taken of a motor whose type is not known may not hold for each.</param>
    public static IEnumerable<MotorSpec> Possible(MotorSpec asRead)
    {
        var all = ByType(asRead);
        var left = all.FindAll(one => one.Found.Count == 0);
        return (left.Count > 0 ? left : all).Select(one => one.Spec);
    }

    /// <summary>What contradicts each type that the motor may be, beyond what contradicts every one of them; none where its type is known.</summary>
    private static List<(MotorSpec Spec, List<Contradiction> Found)> ByType(MotorSpec spec)
    {
        if (spec.Type is not null) return [];
        var rules = Array.FindAll(Rules, rule => !rule(spec).Any());
        var meaning = MotorDeductions.Deduce(spec).Spec.PowerMeaning;
        return [.. MotorKinds.Possible(spec).Select(type => Typed(spec, type, meaning)).Select(typed => (typed, rules.SelectMany(rule => rule(typed)).ToList()))];
    }

    /// <summary>What its watts mean by the type alone is not taken: the plate may yet say otherwise.</summary>
    private static MotorSpec Typed(MotorSpec spec, MotorType type, PowerMeaning? meaning)
    {
        var typed = MotorDeductions.Deduce(spec with { Type = type }).Spec;
        return typed.PowerMeaning == meaning ? typed : typed with { PowerMeaning = null };
    }

    /// <summary>Power that volts, amps and the type's efficiency and power factor do not leave room for. More than all the volt-amperes is said by energy alone, and so is more at the shaft than their watts.</summary>
    private static IEnumerable<Contradiction> PowerOfAmps(MotorSpec spec)
    {
        if (ShaftByAmps.Of(spec) is not { } shaft || LineBalance.OfAmps(spec).Any() || (spec.PowerMeaning == PowerMeaning.Output && LineBalance.OverPowerFactor(spec).Any())) yield break;
        var type = TypeBands.Likely(spec);
        foreach (var (_, watts) in HighSpeed.Watts(spec))
        {
            if (ShaftByAmps.And(shaft, watts, spec.PowerMeaning, type.Efficiency) is not null) continue;
            yield return new(
                ["type", "power", "voltage", "fullLoadAmps"],
                FormattableString.Invariant($"{new RatedWatts(watts)}{Meant(spec)} does not go with the plate's volts and amps, which leave {shaft.ToString("0")} W at the shaft of {(spec.Type is { } known ? MotorKinds.Some(known) : "any type of motor")}."),
                type.Source);
            yield break;
        }
    }

    /// <summary>The power factor is doubted only where power goes with volts and amps without it.</summary>
    private static IEnumerable<Contradiction> PowerOfFactor(MotorSpec spec) =>
        spec.PowerFactor is null || LineBalance.OfAmps(spec).Any() || LineBalance.OverPowerFactor(spec).Any() || PowerOfAmps(spec).Any() ? [] : LineBalance.OfPowerFactor(spec);

    private static string Meant(MotorSpec spec) => spec.PowerMeaning switch { PowerMeaning.Output => " at the shaft", PowerMeaning.Input => " from the line", _ => ", at the shaft or from the line," };
}
