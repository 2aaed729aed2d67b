using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Motors.Drawings;

namespace PartsMatch.Fit.Motors.After;

/// <summary>Does the new motor run as it should? What is read, in the order in which a technician takes it, and what is likely wrong.</summary>
public static class MotorAfter
{
    /// <summary>The rules.</summary>
    public static IReadOnlyList<ReadingRule<SwapCase>> Rules { get; } =
    [
        new BladeInRing(), new TurnsUp(), new TurnOfFan(), new VoltsUnderLoad(), new DropUnderLoad(), new BalanceUnderLoad(), new AmpsUnderLoad(), new BalanceOfAmps(), new CapacitorAfter(), new SpeedUnderLoad(),
        new CondensingSplit(), new EvaporatorAfter(),
    ];

    /// <summary>What each reading says, and the causes that they make likely.</summary>
    public static AfterSwapReport Report(MotorNeed need, MotorSpec part, MotorReadings readings)
    {
        var one = new SwapCase(need, part, readings);
        IReadOnlyList<ReadingCheck> checks = [.. Rules.Select(rule => rule.CheckOf(rule.Judge(one))).OfType<ReadingCheck>()];
        return new(checks, Cause<Evidence>.Rank(CauseTable.All, EvidenceFound.Of(one)), [.. new[] { SplitScale.Of(one) }.OfType<Drawing>()]);
    }
}
