namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Takes what a plate denies behind the word, THERMALLY PROTECTED NO, for nothing said.</summary>
internal static class Denied
{
    /// <summary>A placement, without its values where a denial follows.</summary>
    public static Placement TakenBack(PlateText plate, Lexicon lexicon, Placement placement) =>
        End(plate, lexicon, placement) is { } end ? new Placement(placement.From, end, LabelStands.Nowhere, placement.Cost) : placement;

    /// <summary>The token behind the denial; null when there is none. NO CAP and NO. 1234 deny nothing before them.</summary>
    private static int? End(PlateText plate, Lexicon lexicon, Placement placement)
    {
        var at = placement.To;
        if (plate.Words[at] is not [.., var last] || !lexicon.Denials.Contains(last.Node) || !plate.SameLine(at)) return null;
        if (!placement.Values.Any(value => value.Field.Form.Choices.Count > 0) || Gaps.FromLabel(plate, placement.From, at, last.End) is null) return null;
        return plate.Is(last.End, TokenKind.Number) && plate.SameLine(last.End) && plate.Gap(last.End).IndexOfAny('.', ':', '#') >= 0 ? null : last.End;
    }
}
