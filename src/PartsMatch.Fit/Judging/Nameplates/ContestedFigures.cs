using System.Globalization;

namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>A label between two figures that may both be its own, and both be another field's by their units: 480 V COIL 240 V.</summary>
/// <remarks>
/// A label takes the figure right behind it, where the plate then says as much; but where it may as well be one of a plate that puts its labels behind (240 LRA 120 V COIL 600 V), neither is taken.
/// Of a coil beside contacts a plate must say more (<see cref="PlateLabel.OthersBeside"/>), for "24 V COIL" with the volts of the contacts behind is as common as "COIL 24 V" with them before.
/// </remarks>
internal sealed class ContestedFigures(PlateText plate, Lexicon lexicon, ValueReader reader, FigureReach reach)
{
    private enum Taken
    {
        Behind,
        Before,
        Neither,
    }

    /// <summary>Adds to the cost of the readings that are not meant, and both ways of reading such a stretch as a whole, so that neither is taken, where nothing tells which is.</summary>
    public void Settle(List<Placement> placements)
    {
        var behind = placements.FindAll(one => one is { Stands: LabelStands.Before, Values.Count: > 0 } && (one.Values.Count == 1 || IsPast(one)));
        var costlier = new HashSet<Placement>(ReferenceEqualityComparer.Instance);
        List<Placement> eitherWay = [];
        foreach (var before in placements.FindAll(one => one is { Stands: LabelStands.Behind, Values.Count: > 0 }))
        {
            var own = behind.FindAll(one => before.From < one.From && one.From < before.To && before.To < one.To && one.Values[0].Field == before.Values[0].Field && IsOwn(FigureOf(before, one), one));
            if (own.MaxBy(one => one.To) is not { } last || lexicon.ByUnit.FirstOrDefault(field => field != last.Values[0].Field && Before(field, before) is not null) is not { } other) continue;
            var taken = Which(placements, before, last, other);
            if (taken == Taken.Behind) costlier.Add(before);
            if (taken == Taken.Before) costlier.UnionWith(own);
            if (taken == Taken.Neither) eitherWay.AddRange(own.SelectMany(one => BothWays(before, one, other)));
        }

        for (var at = 0; at < placements.Count; at++)
        {
            if (costlier.Contains(placements[at])) placements[at] = placements[at] with { Cost = placements[at].Cost + Cover.MoreThanPlacement };
        }

        placements.AddRange(eitherWay);
        var ofCoils = placements.FindAll(one => one.Values is [{ } value] && lexicon.ByUnit.Contains(value.Field) && plate.Is(one.From, TokenKind.Number) && StandsWithCoil(placements, one)).ToHashSet();
        placements.RemoveAll(ofCoils.Contains);
    }

    /// <summary>COIL 120 V 60 HZ 240 V 60 HZ: volts with hertz right behind those of a coil are no contact's, unless amps follow them.</summary>
    private bool StandsWithCoil(List<Placement> placements, Placement one) =>
        lexicon.InTurns.Exists(turns =>
            turns.First != one.Values[0].Field && lexicon.OthersBeside.Contains(turns.First)
            && EndOf(turns.Second, one.To) is { } end && !StandsBehind(placements, end, [.. lexicon.OthersBeside[turns.First]])
            && placements.Exists(coil => coil is { Stands: LabelStands.Before, Values: [{ } own, ..] } && own.Field == turns.First && EndOf(turns.Second, coil.To) == one.From));

    private Taken Which(List<Placement> placements, Placement before, Placement behind, Field other)
    {
        // 480 V COIL VOLTAGE 240 V: a word that goes on is not cut off; and 480 V, COIL 240 V has its divider.
        if (Behind(other, before, behind) is not { } last || before.Cost > 0 || Before(other, before) is not { } first || first == last) return Taken.Behind;
        var field = behind.Values[0].Field;
        var putsLabelsBehind = placements.Exists(one => IsLabelledBehind(one, before.From));
        var beside = lexicon.OthersBeside[field].ToList();
        if (beside.Count == 0) return putsLabelsBehind && !IsTold(field, behind.To) ? Taken.Neither : Taken.Behind;
        if (IsTold(field, behind.To) != before.Values.Count > 1) return before.Values.Count > 1 ? Taken.Before : Taken.Behind;

        // FLA 30 480 V COIL 240 V, 120 V COIL 277 V RES 12 A: what stands beside amps is the contact's. Both are fed by one line, or the coil by less (practice), so that 240 V COIL 600 V behind amps may be either way.
        return (reach.StandsBefore(placements, before.From, beside), StandsBehind(placements, behind.To, beside)) switch
        {
            (true, false) when Greatest(first) > Greatest(last) => Taken.Behind,
            (false, true) when Greatest(first) < Greatest(last) => Taken.Before,
            (false, false) when Greatest(first) > Greatest(last) && !putsLabelsBehind => Taken.Behind,
            (false, false) when Greatest(first) < Greatest(last) && IsToldBetween(field, behind) => Taken.Before,
            _ => Taken.Neither,
        };
    }

    private IEnumerable<Placement> BothWays(Placement before, Placement behind, Field other)
    {
        if (Before(other, before) is not { } first || Behind(other, before, behind) is not { } last) yield break;
        yield return new(before.From, behind.To, LabelStands.Nowhere, 0, [.. before.Values, new(other, last, new Stretch(FigureOf(before, behind), behind.To)), .. behind.Values.Skip(1)]);
        yield return new(before.From, behind.To, LabelStands.Nowhere, 0, [.. behind.Values, .. before.Values.Skip(1), new(other, first, new Stretch(before.From, behind.From))]);
    }

    /// <summary>The figure before a label by its own unit, which may be the beginning of the label: 14 of 14 VA INRUSH.</summary>
    private string? Before(Field other, Placement before) =>
        reach.Ends(before.From).Select(end => reach.UnitEnd(other, end)).LastOrDefault(end => end < before.To) is { } unit ? reader.Read(other, plate.Slice(before.From, unit), null) : null;

    /// <summary>The figure behind a label by its own unit.</summary>
    private string? Behind(Field other, Placement before, Placement behind) =>
        FigureOf(before, behind) is var figure && plate.Is(figure, TokenKind.Number) && !reach.IsBare(figure, behind.To) ? reader.Read(other, plate.Slice(figure, behind.To), null) : null;

    /// <summary>Where the figure behind a label begins: right there, or behind those that the label is read past, 240 V of COIL 9 VA 240 V.</summary>
    private int FigureOf(Placement before, Placement behind) => IsPast(behind) ? behind.Values[0].Where[^1].From : before.To;

    private bool IsPast(Placement one) => one is { Stands: LabelStands.Before, Values: [{ Where.Count: 2 } value, ..] } && lexicon.Past.Contains(value.Field);

    private bool IsOwn(int figure, Placement own) => own.Cost == (IsPast(own) ? Cover.MoreThanPlacement : 0) && !(reach.IsBare(figure, own.To) && reach.IsUnitOfAny(own.To));

    /// <summary>240 LRA: a figure with its label, and not merely its unit, behind it.</summary>
    private bool IsLabelledBehind(Placement one, int end) =>
        one.To == end && plate.SameLine(end) && one is { Stands: LabelStands.Behind, Values: [{ } value, ..] } && !lexicon.UnitsOf(value.Field).IsEmpty && !reach.Ends(one.From).Exists(figure => reach.UnitEnd(value.Field, figure) == end);

    /// <summary>Whether what stands in turns with a field follows: the 60 HZ of 600 V COIL 120 V 60 HZ.</summary>
    private bool IsTold(Field field, int at) => lexicon.InTurns.Any(turns => turns.First == field && EndOf(turns.Second, at) is not null);

    /// <summary>120 V CLOCK 60 HZ 240 V: whether what stands in turns with a field is right behind the label, and so behind the figure before it as well.</summary>
    private bool IsToldBetween(Field field, Placement behind) => behind.Values.Skip(1).Any(value => lexicon.InTurns.Contains((field, value.Field)));

    /// <summary>The token behind a figure of a field, with its unit, that begins with one; null when none does.</summary>
    private int? EndOf(Field field, int at) => at < plate.Count && plate.SameLine(at) ? reach.Ends(at).Select(end => reach.UnitEnd(field, end)).FirstOrDefault(end => end is not null) : null;

    /// <summary>12 A RES, RES 12 A: a figure or a label of one of some fields begins with a token.</summary>
    private bool StandsBehind(List<Placement> placements, int at, List<Field> fields) => at < plate.Count && plate.SameLine(at) && (
        placements.Exists(one => one.From == at && one.Values.Any(value => fields.Contains(value.Field)))
        || reach.Ends(at).Exists(end => fields.Exists(field => reach.UnitEnd(field, end) is not null))
        || plate.Words[at].Exists(match => match.Node.Labels.Exists(label => fields.Contains(label.Field))));

    private static double Greatest(string figures) =>
        figures.Split(['-', '/', ' ']).Max(figure => double.TryParse(figure, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : 0);
}
