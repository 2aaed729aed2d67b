namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Gives figures before volts to the label that stands before the first of them only: LRA 240 AT 240 V 200 AT 480 V, HP 1@120V 2@240V.</summary>
internal sealed class RatingRun(PlateText plate, Lexicon lexicon, ValueReader reader, FigureReach reach)
{
    /// <summary>What speaks for them: V 200 would be volts, and is a rating between two.</summary>
    private const int Favour = 1;

    /// <summary>Adds them to the placements.</summary>
    public void AddTo(List<Placement> placements)
    {
        foreach (var (volts, ratings) in lexicon.RatedAt)
        {
            foreach (var first in placements.FindAll(one => one is { Stands: LabelStands.Before, Values: [{ } value] } && ratings.Contains(value.Field))) placements.AddRange(Behind(first, volts));
        }
    }

    private IEnumerable<Placement> Behind(Placement first, Field volts)
    {
        var (field, unit) = (first.Values[0].Field, first.Values[0].Text[(first.Values[0].Text.LastIndexOf(' ') + 1)..]);
        for (var at = VoltsEnd(first.To, volts); at is { } figure && plate.Is(figure, TokenKind.Number) && plate.SameLine(figure);)
        {
            var to = reach.UnitEnd(field, figure + 1) ?? figure + 1;
            at = VoltsEnd(to, volts);
            if (at is not { } end || reader.Read(field, plate.Slice(figure, to), unit) is not { } text) yield break;
            yield return new(figure, to, LabelStands.Nowhere, -Favour, new PlacedValue(field, text, new Stretch(figure, to)));
            if (plate.IsWord(to, "at") && reader.Read(volts, plate.Slice(to + 1, end), null) is { } beside) yield return new(to, end, LabelStands.Before, 0, new PlacedValue(volts, beside, new Stretch(to, end)));
        }
    }

    /// <summary>The token behind AT 240 V, @240V or /240 V; null when no such volts begin with a token.</summary>
    private int? VoltsEnd(int at, Field volts)
    {
        var isAt = plate.IsWord(at, "at");
        var from = isAt ? at + 1 : at;
        if (!plate.Is(from, TokenKind.Number) || !plate.SameLine(from) || plate.Gap(from).Trim() is not ("" or "@" or "/")) return null;
        var end = from + 1;
        return reach.UnitEnd(volts, end) ?? (isAt && !reach.IsUnitOfAny(end) ? end : null);
    }
}
