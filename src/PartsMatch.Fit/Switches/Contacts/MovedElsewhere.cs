using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>What follows where contacts moved elsewhere than they should: one that can be set is set anew, one that cannot has failed, and of an old one of which that is not known it is asked.</summary>
internal static class MovedElsewhere
{
    /// <summary>Asks whether an old one can be set.</summary>
    /// <param name="open">What is not known.</param>
    public static Ruling AskWhetherItCanBeSet(this Ruling open) => open.ThenRead("isAdjustable", "See whether it can be set: a knob, a scale or a setting screw.", Side.Plate);

    /// <summary>The ruling.</summary>
    /// <param name="said">Where it moved, and where it should, without a full stop.</param>
    /// <param name="limit">The limit.</param>
    /// <param name="instrument">What it is set by: "the gauge".</param>
    /// <param name="isAdjustable">Whether it can be set; null when not known.</param>
    /// <param name="isOld">Whether it is the old one.</param>
    public static Ruling Judge(FormattableString said, FormattableString limit, string instrument, bool? isAdjustable, bool isOld)
    {
        var sentence = FormattableString.Invariant(said);
        if (isAdjustable == false) return Ruling.Bad($"{sentence}, and it cannot be set.", limit).ThePartHasFailed();
        if (isAdjustable is null && isOld) return Ruling.Bad($"{sentence}; whether it can be set is not known.", limit).AskWhetherItCanBeSet();
        return Ruling.Bad($"{sentence}: set it anew by {instrument}, and replace it when it does not stay.", limit);
    }
}
