using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Valves.CondensingPressureValves.Proof;

/// <summary>Is it the condensing-pressure valve, and is the new one right?</summary>
public static class CondensingPressureValveProof
{
    /// <summary>The rules, before and after alike.</summary>
    public static IReadOnlyList<ReadingRule<CondensingPressureValveCase>> Rules { get; } = [new ChargeToFlood(), new HeadHeld(), new RegulatorHeld(), new DifferenceHeld()];

    /// <summary>Whether the old one has failed.</summary>
    public static Diagnosis Diagnose(HeadNeed need, CondensingPressureValveReadings readings) => Diagnosis.Of(Rules, new CondensingPressureValveCase(need, readings), []);

    /// <summary>Whether the new one works as it should.</summary>
    public static AfterSwapReport Report(HeadNeed need, CondensingPressureValveSpec part, CondensingPressureValveReadings readings)
    {
        var one = new CondensingPressureValveCase(need, readings, part);
        return new([.. Rules.Select(rule => rule.CheckOf(rule.Judge(one))).OfType<ReadingCheck>()], [], []);
    }
}
