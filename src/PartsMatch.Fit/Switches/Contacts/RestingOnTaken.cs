using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>Answers that rest on what is taken of an old part whose plate does not say it.</summary>
/// <remarks>What only mostly holds is taken of an old part alone, and never of a catalogue part, whose record is then silent: the answer says what was taken, and where a part would fail by it, it stays open.</remarks>
internal static class RestingOnTaken
{
    /// <summary>The same answer, with what it rests on.</summary>
    /// <param name="found">The answer by what was taken.</param>
    /// <param name="field">The field of the old plate that does not say it.</param>
    /// <param name="taken">What was taken, and why.</param>
    /// <param name="side">Whose field it is: the old plate's, where nothing else is said.</param>
    public static Finding RestingOn(this Finding found, string field, FormattableString taken, Side side = Side.Plate)
    {
        var told = found.Then(taken);
        return found.Verdict == Verdict.Fails ? Finding.Unknown(side, field, $"{new Said(told)}") : told;
    }

    /// <summary>What an answer says; formed only when it is shown.</summary>
    private sealed record Said(Finding Found)
    {
        public override string ToString() => Found.Sentence;
    }
}
