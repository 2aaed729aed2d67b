using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Capacitors.Proof;

/// <summary>Is it the capacitor, and is the new one right?</summary>
public static class CapacitorProof
{
    /// <summary>The rules, before and after alike.</summary>
    public static IReadOnlyList<ReadingRule<CapacitorCase>> Rules { get; } = [new Look(), new FirstSection(), new SecondSection(), new VoltsAcross()];

    /// <summary>Whether the old one has failed.</summary>
    public static Diagnosis Diagnose(CapacitorNeed need, CapacitorReadings readings)
    {
        var one = new CapacitorCase(need, readings);
        return Diagnosis.Of(Rules, one, [.. new[] { WrongOne(need), TooManyVolts(one) }.OfType<MendFirst>()]) with { Drawings = CapacitorDrawings.Of(one) };
    }

    /// <summary>Whether the new one is what the motor asks for.</summary>
    public static AfterSwapReport Report(CapacitorNeed need, CapacitorSpec part, CapacitorReadings readings)
    {
        var one = new CapacitorCase(need, readings, part);
        return new([.. Rules.Select(rule => rule.CheckOf(rule.Judge(one))).OfType<ReadingCheck>()], [], CapacitorDrawings.Of(one));
    }

    private static MendFirst? WrongOne(CapacitorNeed need)
    {
        if (need.Site.MotorAsksFor is not { Capacitance.Microfarads: var asked } motor || need.Plate.Rating is not { IsNone: false } marked) return null;
        return MotorAgainstCan.Has(marked, motor) ? null
            : new("capacitorWrong", FormattableString.Invariant($"The old one is marked {Deducing.Text(marked)}; the motor asks for {asked:0.##} µF ±{MeasuredCapacitor.UsualPercent} %."), "Fit what the motor's plate asks for, not what was there.", CapacitorSources.RunCapacitor);
    }

    private static MendFirst? TooManyVolts(CapacitorCase one) =>
        new VoltsAcross().Judge(one) is { Verdict: ReadingVerdict.Bad } bad ? new("voltsOverMarking", bad.Sentence, "Fit a capacitor marked for more volts, at least the motor plate's.", CapacitorReadingSources.CapacitorVolts) : null;
}
