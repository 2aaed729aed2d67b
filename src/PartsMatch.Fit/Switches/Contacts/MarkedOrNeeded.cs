using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>Old switches that can be set, and of which something else is needed than they are marked with: they are shipped with a setting, and nobody may have set them since, or somebody to what is needed.</summary>
internal static class MarkedOrNeeded
{
    /// <summary>What is wrong by what is needed condemns one only where it is wrong by what it is marked with, too.</summary>
    /// <param name="byNeeded">What is said by what is needed.</param>
    /// <param name="byMarked">What is said by what it is marked with; null where that is no other, or where it cannot be set.</param>
    /// <param name="closed">Whether its contacts are closed.</param>
    /// <param name="isManual">Whether it is reset by hand.</param>
    /// <param name="instrument">What tells where it moves: "the gauge".</param>
    public static Ruling UnlessRightAsMarked(this Ruling byNeeded, Ruling? byMarked, bool closed, bool isManual, string instrument)
    {
        if (byNeeded.Verdict != ReadingVerdict.Bad || byMarked is null or { Verdict: ReadingVerdict.Bad }) return byNeeded;
        var open = Ruling.CantTell($"{byNeeded.Sentence} So it is by what is needed; as it is marked it need not be, and it may be set so still.");
        return (closed, isManual) switch
        {
            (true, _) => open.ThenRead("openedAt", $"Set it to what is needed, and read {instrument} as it opens."),
            (_, true) => open.ThenRead("holdsAfterReset", "Set it to what is needed, and press its button: does it stay closed?"),
            _ => open.ThenRead("closedAt", $"Set it to what is needed, and read {instrument} as it closes."),
        };
    }
}
