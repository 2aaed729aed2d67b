namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Finds figures that look like those of a field and are another's: START CAP 88-108 MFD 110 V is no run capacitor, and its volts are not the motor's. They are left over as a whole.</summary>
internal sealed class StrangerFigures(PlateText plate, Lexicon lexicon, FigureReach reach)
{
    /// <summary>All such stretches, without values.</summary>
    public IEnumerable<Placement> All()
    {
        if (lexicon.Alike.Count == 0) yield break;
        for (var from = 0; from < plate.Count; from++)
        {
            if (plate.RunsOn(from)) continue;
            foreach (var (end, node) in plate.Words[from])
            {
                if (node.AlikeTo is not { } word) continue;
                foreach (var to in Ends(end, word.Field).Where(to => Gaps.FromLabel(plate, from, end, to) is not null)) yield return Stranger(from, to, 0);
            }

            foreach (var field in lexicon.Alike)
            {
                if (!plate.Is(reach.UnitEnd(field, from) ?? from, TokenKind.Number)) continue;
                foreach (var to in Ends(from, field))
                {
                    if (IsSpan(from, field)) yield return Stranger(from, to, 0);
                    foreach (var (end, node) in plate.Words[to])
                    {
                        if (node.AlikeTo is { } word && word.Field == field && Gaps.ToLabel(plate, from, to, end) is not null) yield return Stranger(from, end, word.Label.OnEitherSide ? 0 : Cover.MoreThanPlacement);
                    }
                }
            }
        }
    }

    private static Placement Stranger(int from, int to, int cost) => new(from, to, LabelStands.Nowhere, cost);

    /// <summary>Where figures with their unit before or behind them end, 88-108 MFD or MFD 88-108, without their second figure and with it.</summary>
    private IEnumerable<int> Ends(int from, Field field)
    {
        var first = reach.UnitEnd(field, from) ?? from;
        foreach (var figure in reach.Ends(first))
        {
            var end = reach.UnitEnd(field, figure) ?? figure;
            if (first == from && end == figure && !lexicon.NeedsNoLabel(field, plate.Slice(from, end))) continue;
            yield return end;
            if (SecondEnd(end, field) is { } second) yield return second;
        }
    }

    /// <summary>The 110 VAC behind 88-108 MFD.</summary>
    private int? SecondEnd(int at, Field field)
    {
        var figure = reach.UnitEnd(lexicon.TailUnits, at) ?? at;
        if (!plate.Is(figure, TokenKind.Number) || !plate.SameLine(at) || !Gaps.BetweenHalves(plate.Gap(at)) || !lexicon.IsUsualTail(field, plate.Slice(figure, figure + 1))) return null;
        return reach.UnitEnd(lexicon.TailUnits, figure + 1) ?? (figure > at ? figure + 1 : null);
    }

    /// <summary>88-108 MFD: no run capacitor is marked with a span.</summary>
    private bool IsSpan(int from, Field field) => FigureText.Ends(plate.Slice(from, from + 1)) is not null && !plate.Slice(from, from + 1).Contains('/') && reach.UnitEnd(field, from + 1) is not null;
}
