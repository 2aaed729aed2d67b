namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Finds every way in which some stretch of a plate can be read by itself.</summary>
internal sealed class PlacementSearch
{
    /// <summary>What speaks for a word with a figure in it: W1 is a terminal sooner than one watt.</summary>
    private const int OfOnePiece = 1;

    /// <summary>A shorter one may count contacts where plates have such counts: RELAY NO 2.</summary>
    private const int ShortestNumber = 3;

    private readonly PlateText plate;
    private readonly ValueReader reader;
    private readonly FigureReach reach;
    private readonly RepeatedFigures repeated;
    private readonly ValueSearch values;
    private readonly PastSearch past;
    private readonly FreeWords free;
    private readonly ContestedFigures contested;
    private readonly LabelledFigures labelled;
    private readonly ToleranceSearch tolerances;
    private readonly Lexicon lexicon;
    private readonly List<Placement> placements = [];

    /// <summary>Prepares to search a plate.</summary>
    public PlacementSearch(PlateText plate, Lexicon lexicon, ValueReader reader, FigureReach reach)
    {
        (this.plate, this.lexicon, this.reader, this.reach) = (plate, lexicon, reader, reach);
        repeated = new(plate, reach);
        values = new(plate, lexicon, reader, reach, repeated);
        free = new(plate, lexicon, values);
        labelled = new(plate, lexicon, reader, reach, values, placements);
        past = new(plate, lexicon, reader, reach);
        contested = new(plate, lexicon, reader, reach);
        tolerances = new(plate, lexicon, reader);
    }

    /// <summary>All placements.</summary>
    public List<Placement> All()
    {
        for (var at = 0; at < plate.Count; at++)
        {
            if (!plate.RunsOn(at)) AddAt(at);
        }

        new RatingRun(plate, lexicon, reader, reach).AddTo(placements);
        past.AddTo(placements);
        repeated.AddTo(placements);
        new BareFigures(plate, lexicon, reader, reach, repeated).Settle(placements);
        new LentSettings(plate, lexicon, reach, repeated).TakeFrom(placements);
        contested.Settle(placements);
        past.YieldBehind();
        new TailSearch(plate, lexicon, reader, reach).AddTo(placements);
        new LabelSearch(plate).AddTo(placements);
        placements.AddRange(new RowSearch(plate, values, reader).All());
        placements.AddRange(new GroupSearch(plate, lexicon, reader, reach).All());
        placements.AddRange(new StepSearch(plate, lexicon, reader).All());
        placements.AddRange(new StepRows(plate, lexicon, reader).All());
        placements.AddRange(new StrangerFigures(plate, lexicon, reach).All());
        placements.AddRange(new BracketSearch(plate, lexicon, reader, reach).All());
        placements.AddRange(new TurnSearch(plate, lexicon, reader, reach).All());
        placements.AddRange(new MarkSearch(plate, lexicon, reader, reach).All());
        placements.AddRange(new UnreadSearch(plate, values, reach).All());
        new UnknownWords(plate, reach).AddTo(placements);
        JoinedSizes.TakeFrom(placements, plate, lexicon, reach);
        placements.RemoveAll(IsPart);
        for (var at = 0; at < placements.Count; at++) placements[at] = Denied.TakenBack(plate, lexicon, tolerances.Within(placements[at]));
        return placements;
    }

    /// <summary>Whether a reading begins or ends within a figure.</summary>
    private bool IsPart(Placement placement) =>
        CutFigures.IsTorn(plate, placement.From) || CutFigures.IsTorn(plate, placement.To) || reach.GoesOn(placement.From) || (placement.Values.Count > 0 && reach.IsSecondEnd(placement.From));

    private void AddAt(int from)
    {
        foreach (var match in plate.Words[from])
        {
            var node = match.Node;
            if (node.Labels.Count > 0) labelled.AddBehind(from, match);
            if (node.Words.Count > 0) AddWordBeforeLabel(from, match);
            if (node.Free.Count > 0 && !AnnouncesFigure(from, match)) AddFree(from, match);
            if (node.IsFiller) placements.Add(new(from, match.End, LabelStands.Nowhere, Cover.Token * (match.End - from)));
            if (node.IsStranger || (node.IsNumbered && IsNumber(match.End))) AddStranger(from, match.End);
        }

        if (tolerances.At(from) is { } share) placements.Add(share);
        if (!plate.Is(from, TokenKind.Number)) return;
        labelled.AddBefore(from);
        foreach (var field in lexicon.Tails.Keys) AddUnlabelled(from, field);
    }

    /// <summary>TEAO, 48Y, SPDT; not the NO of 1 POLE NO 12345 or of RELAY NC NO. 1234, which is a number's.</summary>
    private void AddFree(int from, Match match)
    {
        if (plate.IsWord(match.End - 1, "NO") && IsNumber(match.End))
        {
            AddStranger(match.End - 1, match.End);
            return;
        }

        if (free.Said(from, match) is { Count: > 0 } said) placements.Add(new(from, match.End, LabelStands.Nowhere, plate.HasFigures(from) ? -OfOnePiece : 0, [.. said.Select(word => reader.Placed(word, from, match.End))]));
    }

    /// <summary>Whether a word ends in the label of the figure right behind it, and the rest of it says as much: HIGH PRESSURE CUT-OUT 400 PSI.</summary>
    private bool AnnouncesFigure(int from, Match match)
    {
        foreach (var (begin, last) in plate.Words.Ending(match.End))
        {
            if (begin > from && last.Node.Labels.Exists(label => labelled.HasFigureBehind(match.End, label.Field)) && (match.Node.Labels.Count > 0 || plate.Words[from].Exists(head => head.End == begin && head.Node.Free.Exists(word => match.Node.Free.Exists(one => one.Field == word.Field))))) return true;
        }

        return false;
    }

    /// <summary>BALL BRG, CONT DUTY, F INS.</summary>
    private void AddWordBeforeLabel(int from, Match match)
    {
        if (match.End == plate.Count) return;
        foreach (var last in plate.Words[match.End])
        {
            if (last.Node.Labels.Count == 0 || Gaps.ToLabel(plate, from, match.End, last.End) is not { } cost) continue;
            foreach (var word in match.Node.Words)
            {
                if (IsBehindWords(last, word.Field)) placements.Add(new(from, last.End, LabelStands.Nowhere, cost, reader.Placed(word, from, last.End)));
            }
        }
    }

    private static bool IsBehindWords(Match word, Field field)
    {
        foreach (var label in word.Node.Labels)
        {
            if (label.Field == field && !label.Label.OnlyBehind) return true;
        }

        return false;
    }

    /// <summary>10/370, 45+5/440: a whole chunk with a second figure that needs no label behind its last slash.</summary>
    private void AddUnlabelled(int from, Field field)
    {
        if (!plate.BeginsChunk(from) || plate.ChunkEnd(from) != from + 1) return;
        var figures = plate.Slice(from, from + 1);
        if (lexicon.NeedsNoLabel(field, figures) && reader.Read(field, figures, null) is { } text) placements.Add(new(from, from + 1, LabelStands.Nowhere, 0, new PlacedValue(field, text, new Stretch(from, from + 1))));
    }

    /// <summary>Whether the number of a part begins with a token: 12345, AX-17, but no figure that has a unit, or a label behind it that reads it.</summary>
    private bool IsNumber(int at)
    {
        if (at == plate.Count || !plate.HasFigures(at) || plate.Words[at].Count > 0) return false;
        return !plate.Is(at, TokenKind.Number) || (plate.Slice(at, at + 1) is var figure && (figure.Length >= ShortestNumber || !lexicon.Knows($"{figure}NO")) && !figure.Contains('/') && reach.Ends(at).TrueForAll(end => !reach.IsUnitOfAny(end) && (end == plate.Count || plate.Words[end].TrueForAll(match => match.Node.Labels.TrueForAll(label => values.At(at, label).Count == 0)))));
    }

    /// <summary>SER 230A, TEST 46 BAR, NOT FOR INVERTER: the chunk with figures, or the word of the vocabulary, behind a word that announces what no field holds.</summary>
    private void AddStranger(int from, int at)
    {
        if (at == plate.Count || !plate.SameLine(at)) return;
        var chunkEnd = plate.ChunkEnd(at);
        if (Gaps.FromLabel(plate, from, at, chunkEnd) is null) return;
        var end = plate.HasFigures(at) ? chunkEnd : plate.Words[at].Where(match => match.Node.Free.Count > 0).Select(match => match.End).DefaultIfEmpty(0).Max();
        if (end > 0) placements.Add(new(from, end, LabelStands.Nowhere, 0));
        foreach (var unit in reach.Ends(at).Select(last => reach.UnitEnd(lexicon.UnitsOfAny, last)).OfType<int>().Where(unit => unit > end)) placements.Add(new(from, unit, LabelStands.Nowhere, 0));
    }
}
