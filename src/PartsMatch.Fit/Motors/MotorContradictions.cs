using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>Readings of a motor's plate that cannot all be true. None of them is picked.</summary>
public static class MotorContradictions
{
    /// <summary>Shafts within this are the same (practice).</summary>
    internal const double SameShaftMillimetres = 0.04;

    private static readonly Func<MotorSpec, IEnumerable<Contradiction>>[] Rules = [Counts, PhaseOfType, CapacitorOfType, SpeedOfFrequency, SpeedOfPoles, StarDeltaOfVolts, LineBalance.OfAmps, PowerBalance.InTwice, TypeFigures.Contradictions, ShaftOfFrame];

    /// <summary>All that disagree.</summary>
    public static IReadOnlyList<Contradiction> Find(MotorSpec spec) => [.. Rules.SelectMany(rule => rule(spec))];

    private static IEnumerable<Contradiction> Counts(MotorSpec spec)
    {
        foreach (var name in Ratings.Of(spec).Unpaired)
        {
            var field = Shape<MotorSpec>.Of.Find(name)!;
            string[] beside = name switch
            {
                "power" => ["speed"],
                "inputPower" => ["power"],
                _ => spec.Speed is { Count: > 1 } ? ["voltage", "speed"] : ["voltage"],
            };
            var others = string.Join(" and ", beside.Select(other => Shape<MotorSpec>.Of.Find(other)!.TextOf(spec)).OfType<string>());
            yield return new([name, .. beside], $"{field.Label} {field.TextOf(spec)} cannot be paired with {(others.Length > 0 ? others : "anything else on the plate")}: there is not one figure for each.", MotorSources.SideBySide);
        }
    }

    private static IEnumerable<Contradiction> PhaseOfType(MotorSpec spec)
    {
        if (MotorKinds.PhasesOf(spec.Type) is not { } phases || spec.Phase is not { } read || read == phases) yield break;
        yield return new(["type", "phase"], $"A motor of the type {Deducing.Text(spec.Type!.Value)} is {Deducing.Text(phases)}, but the plate says {Deducing.Text(read)}.", MotorSources.TypeOfMotor);
    }

    private static IEnumerable<Contradiction> CapacitorOfType(MotorSpec spec)
    {
        if (spec.RunCapacitor is not { } capacitor) yield break;
        if (spec.Type is { } type && MotorKinds.PhasesOf(type) != Phases.Three && !MotorKinds.MayBe(type, null, !capacitor.IsNone))
        {
            yield return capacitor.IsNone
                ? new(["type", "runCapacitor"], $"A motor of the type {Deducing.Text(type)} has a run capacitor, but the plate says none.", MotorSources.TypeOfMotor)
                : new(["type", "runCapacitor"], $"A motor of the type {Deducing.Text(type)} has no run capacitor, but the plate says {Deducing.Text(capacitor)}{(type == MotorType.CapacitorStart ? ": it may be its start capacitor" : string.Empty)}.", MotorSources.TypeOfMotor);
        }
        else if (spec.Phase == Phases.Three && !capacitor.IsNone)
        {
            yield return new(["phase", "runCapacitor"], $"A three-phase motor has no run capacitor, but the plate says {Deducing.Text(capacitor)}.", MotorSources.TypeOfMotor);
        }
    }

    private static IEnumerable<Contradiction> SpeedOfFrequency(MotorSpec spec)
    {
        if (RatedSpeeds.AreCrossed(spec)) yield return new(["speed", "frequency"], $"{Deducing.Text(spec.Speed!)} stand beside {Deducing.Text(spec.Frequency!)}, but a motor turns faster at the higher frequency: one of the two stands the other way round.", MotorSources.SideBySide);
    }

    private static IEnumerable<Contradiction> SpeedOfPoles(MotorSpec spec)
    {
        if (!MotorKinds.IsInduction(spec)) yield break;
        foreach (var (hertz, rpm) in HighSpeed.Rpm(spec).Where(point => !double.IsNaN(point.Hertz)))
        {
            var fastest = PoleCounts.Synchronous(2, hertz);
            var possible = PoleCounts.Of(rpm, hertz);
            if (!Within.AtMost(rpm, fastest))
            {
                yield return new(["speed", "frequency"], FormattableString.Invariant($"{rpm:0} rpm is above {fastest:0} rpm, the synchronous speed of two poles at {hertz:0.##} Hz: no induction motor runs faster."), MotorSources.Synchronous);
            }
            else if (possible.Count > 0 && possible.All(count => Within.AtLeast(rpm, PoleCounts.Synchronous(count, hertz))))
            {
                yield return new(["speed", "frequency"], FormattableString.Invariant($"{rpm:0} rpm is the synchronous speed of {possible[0]} poles at {hertz:0.##} Hz, and an induction motor never reaches synchronous speed: it slips. The plate may give the speed of its field, or the motor be of another type."), MotorSources.Synchronous);
            }
            else if (possible.Count == 0)
            {
                yield return new(["speed", "frequency"], FormattableString.Invariant($"{rpm:0} rpm at {hertz:0.##} Hz is not within 16 % below the synchronous speed of any pole count."), MotorSources.Slip);
            }
            else if (spec.Poles is > 0 and var poles && !PoleCounts.Fits(rpm, poles, hertz))
            {
                yield return new(["speed", "poles", "frequency"], FormattableString.Invariant($"{poles} poles at {hertz:0.##} Hz turn a little below {PoleCounts.Synchronous(poles, hertz):0} rpm, but the plate says {rpm:0} rpm."), MotorSources.Slip);
            }
        }
    }

    private static IEnumerable<Contradiction> StarDeltaOfVolts(MotorSpec spec)
    {
        if (spec is not { StarDelta: true, Voltage: { } volts } || StarAndDelta.AreVolts(spec)) yield break;
        yield return new(["starDelta", "voltage"], $"Δ and Y belong to two voltages that stand 1 to √3, such as 230/400 V, but the plate says {Deducing.Text(volts)}.", MotorSources.StarDelta);
    }

    private static IEnumerable<Contradiction> ShaftOfFrame(MotorSpec spec)
    {
        if (spec.Frame is not { } frame || spec.ShaftDiameter is not { } shaft || MotorFrames.Find(frame) is not { } row) yield break;
        if (Within.AtMost(Math.Abs(shaft.Millimeters - row.ShaftDiameter.Millimeters), SameShaftMillimetres)) yield break;
        yield return new(["frame", "shaftDiameter"], $"Frame {Deducing.Text(frame)} has a {Deducing.Text(row.ShaftDiameter)} shaft as standard ({row.Source}), but the plate says {Deducing.Text(shaft)}.", MotorSources.SameShaft);
    }
}
