namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Takes back the only setting that was read before its label where another figure stands behind that label, which no other has: 5 TON 180 PSI MWP 450 PSI, 35 DIFF 14 16 FLA.</summary>
/// <remarks>That units, joints and the labels of amps stand behind their figures tells nothing of the side on which those of settings stand: CUT-OUT 400 CUT-IN 300 16 FLA.</remarks>
internal static class UntoldSettings
{
    /// <summary>The choice with neither of such two figures.</summary>
    /// <param name="lexicon">The words.</param>
    /// <param name="choice">What was chosen.</param>
    /// <param name="all">All placements that there are.</param>
    public static Choice TakenBack(Lexicon lexicon, Choice choice, IReadOnlyList<Placement> all)
    {
        if (lexicon.Settings.Count == 0) return choice;
        var behind = choice.Certain.Where(one => one is { Stands: LabelStands.Behind, Values.Count: > 0 } && lexicon.Settings.Contains(one.Values[0].Field)).ToList();
        if (behind is not [var untold]) return choice;
        var own = all.FirstOrDefault(one =>
            one is { Stands: LabelStands.Before, Cost: 0, Values.Count: > 0 } && one.Values[0].Field == untold.Values[0].Field
            && untold.From < one.From && one.From < untold.To && untold.To < one.To && choice.Certain.All(other => other == untold || other.To <= one.From || one.To <= other.From));
        return own is null ? choice : choice with { Certain = [.. choice.Certain.Where(other => other != untold)], Doubtful = [.. choice.Doubtful, [untold, own]] };
    }
}
