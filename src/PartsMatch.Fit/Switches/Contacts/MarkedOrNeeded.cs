using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>Old switches that can be set, and of which something else is needed than they are marked with: they are shipped with a setting, and nobody may have set them since, or somebody to what is needed.</summary>
internal static class MarkedOrNeeded
{
    /// <summary>What is wrong by what is needed condemns one only where it is wrong by what it is marked with, too.</summary>
    /// <param name="byNeeded">What is said by what is needed.</param>
    /// <param name="byMarked">What is said by what it is marked with; null where that is no other, or where it cannot be set.</param>
    /// <param name="seen">What was seen at it.</param>
    /// <param name="isAdjustable">Whether it can be set; null when not known.</param>
    public static Ruling UnlessRightAsMarked(this Ruling byNeeded, Ruling? byMarked, SeenAtSwitch seen, bool? isAdjustable)
    {
        if (byNeeded.Verdict != ReadingVerdict.Bad || byMarked is null or { Verdict: ReadingVerdict.Bad }) return byNeeded;
        var open = Ruling.CantTell($"{byNeeded.Sentence} So it is by what is needed; as it is marked it need not be, and it may be set so still.");
        if (isAdjustable is null) return open.AskWhetherItCanBeSet();
        if (seen is { IsManual: true, IsClosed: false }) return open.ThenPressAgain(byMarked, seen);
        return open.ThenSeeItMove(seen, $"Set it to what is needed, and read {seen.Instrument} as it {(seen.IsClosed ? "opens" : "closes")}.");
    }

    /// <summary>A button that does not hold where it should by what is needed is pressed again where it should as it is marked, too.</summary>
    private static Ruling ThenPressAgain(this Ruling open, Ruling byMarked, SeenAtSwitch seen) => byMarked.Asks is { } next
        ? open.ThenRead(next.Field, next.Why, next.Side)
        : open.ThenRead(seen.There, $"Let {seen.Feels} come back past where it can be reset as it is marked, press its button again, and read {seen.Instrument}.");
}
