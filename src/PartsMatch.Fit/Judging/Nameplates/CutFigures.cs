namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Takes back figures of which a slash or a sign parts a piece that nothing was read from: HP 1 / 0 is no whole horsepower, 1-1 / 2 A are not two.</summary>
internal static class CutFigures
{
    /// <summary>Digits of the longest figure that has decimals; so many behind a comma are thousands, or another figure: PH 1,825 RPM.</summary>
    private const int MostDigits = 3;

    /// <summary>The choice without such readings.</summary>
    public static Choice TakenBack(PlateText plate, ValueReader reader, FigureReach reach, Choice choice)
    {
        var read = new bool[plate.Count];
        foreach (var placement in choice.Certain.Concat(choice.Doubtful.SelectMany(run => run)).Where(placement => placement.Values.Count > 0)) read.AsSpan(placement.From, placement.To - placement.From).Fill(true);
        List<Placement> certain = [], cut = [];
        foreach (var placement in choice.Certain)
        {
            if (placement.Values.Count == 0) certain.Add(placement);
            else if (RestEnd(placement) is { } rest) cut.Add(placement with { To = rest });
            else if (Cuts(placement.From, placement.From - 1) || Cuts(placement.To, placement.To)) cut.Add(placement);
            else certain.Add(placement);
        }

        return choice with { Certain = certain, Cut = cut };

        bool Cuts(int behind, int left) => left >= 0 && left < plate.Count && !read[left] && IsParted(plate, behind);

        int? RestEnd(Placement placement) => EndOfSpan(plate, reader, reach, placement) is { } end && Array.IndexOf(read, true, placement.To, end - placement.To) < 0 ? end : null;
    }

    /// <summary>The end of a second figure that goes on with a label's own, RANGE -30 °C +15 °C, RANGE 20 F 80 F or RANGE 80 TO 20 F: one of them is no range. Null where none does.</summary>
    private static int? EndOfSpan(PlateText plate, ValueReader reader, FigureReach reach, Placement placement)
    {
        var at = placement.To;
        if (placement.Stands != LabelStands.Before || at == plate.Count || !plate.SameLine(at)) return null;
        var isTo = plate.IsWord(at, "to");
        var second = isTo || plate.Is(at, TokenKind.Burnt) ? at + 1 : at;
        var goesOn = reach.GoesOn(second);
        foreach (var end in reach.Ends(second))
        {
            var (field, to) = (placement.Values[0].Field, reach.UnitEnd(placement.Values[0].Field, end));
            if (goesOn || (isTo && plate.SameLine(second) && (to is not null || !reach.IsUnitOfAny(end)))) return to ?? end;
            if (to is { } last && plate.SameLine(second) && FigureOf(placement, field) is { } first && IsSpan(field, plate.Slice(first, at), plate.Slice(second, last))) return last;
        }

        return null;

        // One that falls, RANGE +15 C -25 C, is no better read by half.
        bool IsSpan(Field field, ReadOnlySpan<char> first, ReadOnlySpan<char> last) =>
            reader.Read(field, $"{first} to {last}", null) is not null || (last[0] is '-' or '−' && reader.Read(field, $"{last} to {first}", null) is not null);

        int? FigureOf(Placement one, Field field) => Enumerable.Range(one.From, one.To - one.From).Cast<int?>().FirstOrDefault(from => reach.Ends(from!.Value).Exists(end => end == one.To || reach.UnitEnd(field, end) == one.To));
    }

    /// <summary>Whether nothing but a slash or a dash stands between a number and the one before it, or its own sign: 20 -230, 20 - 230, -30 +15, -30 + 15.</summary>
    public static bool IsParted(PlateText plate, int at) =>
        plate.Is(at - 1, TokenKind.Number) && plate.Is(at, TokenKind.Number) && plate.SameLine(at)
        && (Gaps.PartsFigure(plate.Gap(at)) || Gaps.EndsInPlus(plate.Gap(at)) || (plate.Gap(at) is " " && plate.Slice(at, at + 1)[0] is '-' or '−'));

    /// <summary>Whether a decimal comma, 2,1, or the bar of 1|4 stands before a number: what touches it on both sides is one figure. That of 1075,60HZ is none, for so long a figure has no decimals.</summary>
    public static bool IsTorn(PlateText plate, int at)
    {
        if (!plate.Is(at - 1, TokenKind.Number) || !plate.Is(at, TokenKind.Number)) return false;
        if (plate.Gap(at) is "|" or "¦") return !plate.BeginsChunk(at);
        if (plate.Gap(at) is not ",") return false;
        var before = plate.Slice(at - 1, at);
        var behind = plate.Slice(at, at + 1);
        var last = before.Length - 1 - before.LastIndexOfAnyExceptInRange('0', '9');
        var first = behind.IndexOfAnyExceptInRange('0', '9') is var end and >= 0 ? end : behind.Length;
        return last is > 0 and <= MostDigits && first is > 0 and < MostDigits;
    }
}
