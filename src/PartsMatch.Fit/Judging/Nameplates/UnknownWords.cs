namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Finds labels with a figure on each side, of which a word that no vocabulary knows may announce the first: XYZ 1.9 LRA 5. That word may as well be a maker's, and neither figure is taken.</summary>
internal sealed class UnknownWords(PlateText plate, FigureReach reach)
{
    /// <summary>What such a pair is worth more than one of its figures with the label: more than any change of side, less than anything else that is read.</summary>
    private const int Favour = Cover.MoreThanPlacement;

    /// <summary>Adds to the placements both ways of reading such a label.</summary>
    public void AddTo(List<Placement> placements)
    {
        var byStart = placements.Where(one => IsBareAt(one, LabelStands.Before)).ToLookup(one => one.From);
        List<Placement> eitherWay =
        [
            .. from before in placements
               where IsBareAt(before, LabelStands.Behind) && IsUnknown(before.From - 1) && plate.SameLine(before.From)
               from label in Enumerable.Range(before.From + 1, before.To - before.From - 1)
               from behind in byStart[label]
               where behind.To > before.To && behind.Values[0].Field == before.Values[0].Field && behind.Values[0].Text != before.Values[0].Text
               from way in (Placement[])[before, behind]
               select new Placement(before.From, behind.To, LabelStands.Nowhere, (Cover.Token * (behind.To - before.To)) - Favour, [.. way.Values]),
        ];
        placements.AddRange(eitherWay);
    }

    /// <summary>Whether a figure without a unit stands right beside a label that is no unit: 1.9 LRA, LRA 5, but not 1.9 A.</summary>
    private bool IsBareAt(Placement one, LabelStands stands) =>
        one is { Cost: 0, Values: [{ } value] } && one.Stands == stands
        && (stands == LabelStands.Behind
            ? reach.Ends(one.From).Exists(end => end < one.To && reach.UnitEnd(value.Field, end) is null)
            : reach.BareBefore(one.From, one.To) is not null);

    private bool IsUnknown(int at) => plate.Is(at, TokenKind.Word) && plate.BeginsChunk(at) && plate.ChunkEnd(at) == at + 1 && plate.AllWords[at].Count == 0 && plate.AllWords.Ending(at + 1).Count == 0;
}
