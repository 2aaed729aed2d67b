namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Figures without a unit, behind which brackets hold what they come to in another: OPENS 55 (13 C), CUT-OUT 400 (28 BAR).</summary>
/// <remarks>
/// What stands in the brackets is no other label's figure. It tells which unit the first is in where that of its label does not come to it, CUT-OUT 28 (406 PSI).
/// Where none does, CUT-OUT 400 (20 BAR), one of a setting's two figures is wrong, and neither is taken.
/// </remarks>
internal sealed class BareFigures(PlateText plate, Lexicon lexicon, ValueReader reader, FigureReach reach, RepeatedFigures repeated)
{
    /// <summary>Puts the placements of such figures with their brackets in the place of those without.</summary>
    public void Settle(List<Placement> placements)
    {
        if (!repeated.HasBrackets) return;
        List<Placement> meant = [.. placements.Select(Meant).OfType<Placement>()];
        placements.Clear();
        placements.AddRange(meant);
    }

    private Placement? Meant(Placement one)
    {
        if (one.Values is not [{ Field: var field }, ..]) return one;
        if (one.Stands == LabelStands.Before && reach.BareBefore(one.From, one.To) is { } bare && repeated.InBrackets(field, one.To) is { } end) return Labelled(one, bare, end);
        if (one.Stands != LabelStands.Behind || reach.BareBefore(0, one.From) is not { } first || repeated.InBrackets(field, one.From) is not { } last || last >= one.To) return one;
        return repeated.MayRepeat(field, first, one.From, last) ? one.Since(first) : lexicon.Settings.Contains(field) ? null : one;
    }

    /// <summary>CUT-OUT 400 (28 BAR).</summary>
    private Placement Labelled(Placement one, int bare, int end)
    {
        var (field, text) = (one.Values[0].Field, one.Values[0].Text);
        if (repeated.Says(one.Values, one.To, end)) return one.Until(end);
        if (text.Contains(" to ", StringComparison.Ordinal) || !lexicon.Settings.Contains(field)) return one;
        var whole = one.Until(end);
        if (repeated.MayRepeat(field, bare, one.To, end) && reader.Read(field, plate.Slice(one.To, end), null) is { } other) return whole with { Values = [whole.Values[0] with { Text = other }, .. whole.Values.Skip(1)] };
        return PlateUnits.AreOne(field, text[(text.LastIndexOf(' ') + 1)..], repeated.UnitAt(field, one.To, end)!) ? one : whole.Asking(new(bare, end));
    }
}
