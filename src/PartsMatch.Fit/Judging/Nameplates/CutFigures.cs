namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Takes back figures of which a slash parts a piece that nothing was read from: HP 1 / 0 is no whole horsepower, 1-1 / 2 A are not two.</summary>
internal static class CutFigures
{
    /// <summary>The choice without such readings.</summary>
    public static Choice TakenBack(PlateText plate, Choice choice)
    {
        var read = new bool[plate.Count];
        foreach (var placement in choice.Certain.Concat(choice.Doubtful.SelectMany(run => run)).Where(placement => placement.Values.Count > 0)) read.AsSpan(placement.From, placement.To - placement.From).Fill(true);
        var byCut = choice.Certain.ToLookup(placement => placement.Values.Count > 0 && (Cuts(placement.From, placement.From - 1) || Cuts(placement.To, placement.To)));
        return choice with { Certain = [.. byCut[false]], Cut = [.. byCut[true]] };

        bool Cuts(int behind, int left) => left >= 0 && left < plate.Count && !read[left] && IsParted(plate, behind);
    }

    /// <summary>Whether nothing but a slash stands between a number and the one before it.</summary>
    public static bool IsParted(PlateText plate, int at) => plate.Is(at - 1, TokenKind.Number) && plate.Is(at, TokenKind.Number) && plate.SameLine(at) && plate.Gap(at).Trim() is "/";
}
