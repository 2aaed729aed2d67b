namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Takes what a plate denies behind the word, THERMALLY PROTECTED NO, for nothing said.</summary>
internal static class Denied
{
    /// <summary>The placements, those before a denial without their values.</summary>
    public static IReadOnlyList<Placement> TakenBack(PlateText plate, Lexicon lexicon, List<Match>[] matches, IReadOnlyList<Placement> all) =>
        [.. all.Select(placement => End(plate, lexicon, matches, placement) is { } end ? new Placement(placement.From, end, LabelStands.Nowhere, placement.Cost) : placement)];

    /// <summary>The token behind the denial; null when there is none. NO CAP and NO. 1234 deny nothing before them.</summary>
    private static int? End(PlateText plate, Lexicon lexicon, List<Match>[] matches, Placement placement)
    {
        var at = placement.To;
        if (at >= plate.Count || !plate.SameLine(at) || !placement.Values.Any(value => value.Field.Form.Choices.Count > 0)) return null;
        if (matches[at] is not [.., var last] || !lexicon.Denials.Contains(last.Node) || Gaps.FromLabel(plate, placement.From, at, last.End) is null) return null;
        return plate.Is(last.End, TokenKind.Number) && plate.SameLine(last.End) && plate.Gap(last.End).IndexOfAny('.', ':', '#') >= 0 ? null : last.End;
    }
}
