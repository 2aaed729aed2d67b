namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Takes away readings of a figure at the label behind it where that label, and every one that follows in its row, has a figure of its own behind it: of HIGH PRESSURE 28 BAR CUT-OUT 24 CUT-IN 18 the 28 bar are no cut-out.</summary>
/// <remarks>
/// Covering alone would let each figure slide to the next label, for then only the last is left over.
/// Where all figures of the row have units, 28 BAR CUT-OUT 24 BAR CUT-IN 18 BAR, or a label with its figure before it comes first, the labels may as well stand behind theirs: then nothing is taken away.
/// A figure without a unit is treated so only right behind a setting's label that does not read it: the 35 of AUTO RESET 35 DIFF 14 is no differential.
/// </remarks>
internal sealed class LentSettings(PlateText plate, Lexicon lexicon, FigureReach reach, RepeatedFigures repeated)
{
    /// <summary>Takes them out of the placements.</summary>
    public void TakeFrom(List<Placement> placements)
    {
        var behind = placements.FindAll(one => one is { Stands: LabelStands.Behind, Values: [{ } value, ..] } && lexicon.Settings.Contains(value.Field));
        if (behind.Count == 0) return;
        var own = placements.Where(one => one is { Stands: LabelStands.Before, Cost: 0, Values.Count: > 0 }).ToLookup(one => one.From);
        var lent = behind.Where(one => IsLent(one, one.Values[0].Field, own) && !placements.Exists(other => IsLabelledBehind(other, one.From))).ToHashSet();
        placements.RemoveAll(lent.Contains);
    }

    private bool IsLent(Placement one, Field field, ILookup<int, Placement> own)
    {
        var isAnnounced = IsAnnounced(one.From);
        if (reach.Ends(one.From).Select(end => reach.UnitEnd(field, end) ?? repeated.InBrackets(field, end)).FirstOrDefault(end => end is not null) is not { } unit)
        {
            if (!isAnnounced) return false;
            unit = reach.Ends(one.From)[^1];
        }

        var label = Enumerable.Range(unit, Math.Max(0, one.To - unit)).FirstOrDefault(at => own[at].Any(other => other.Values[0].Field == field && other.To > one.To), -1);
        return label >= 0 && HasOwn(label, isAnnounced || one.Cost > 0, own);
    }

    /// <summary>Whether a label and those that follow it have a figure each behind them, of which one says by its lack of a unit that it goes with no label behind.</summary>
    private bool HasOwn(int label, bool isTold, ILookup<int, Placement> own)
    {
        for (var at = label; ;)
        {
            if (own[at].MaxBy(one => one.To) is not { } one) return false;
            isTold |= Enumerable.Range(at + 1, one.To - at - 1).Any(figure => reach.IsBare(figure, one.To));
            at = one.To;
            if (at == plate.Count || !plate.SameLine(at)) return isTold;
            if (reach.IsUnitOfAny(at)) return false;
            if (!plate.Words[at].Exists(match => match.Node.Labels.Count > 0)) return isTold;
        }
    }

    /// <summary>AUTO RESET 35 DIFF 14: whether a setting's label stands right before a figure, though it reads none without a unit.</summary>
    private bool IsAnnounced(int figure) =>
        plate.SameLine(figure) && plate.Words.Ending(figure).Exists(before => before.Word.Node.Labels.Exists(label => lexicon.Settings.Contains(label.Field) && !label.Label.OnlyBehind) && Gaps.FromLabel(plate, before.From, figure, figure + 1) is 0);

    /// <summary>16 FLA: a figure with its label, and not merely its unit, behind it.</summary>
    private bool IsLabelledBehind(Placement one, int end) =>
        one.To == end && plate.SameLine(end) && one is { Stands: LabelStands.Behind, Values: [{ } value, ..] } && !reach.Ends(one.From).Exists(figure => reach.UnitEnd(value.Field, figure) == end);
}
