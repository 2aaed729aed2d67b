using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Reads two figures of a field that marks tell apart: 400 V Y / 230 V Δ, Δ/Y 230/400 V, 230/400 V Δ/Y, LOW VOLTS 115 HIGH VOLTS 230.</summary>
internal sealed class MarkSearch(PlateText plate, Lexicon lexicon, ValueReader reader, FigureReach reach)
{
    /// <summary>Where the marks stand to their figures.</summary>
    private enum Marks
    {
        BeforeEach,
        BehindEach,
        BeforeBoth,
        BehindBoth,
    }

    private static readonly Marks[] Orders = Enum.GetValues<Marks>();

    /// <summary>A walk over the tokens that takes marks, figures and units as they come.</summary>
    private sealed record Walk(int From, int At, Field Field, bool HasUnit = false)
    {
        public IReadOnlyList<MarkEntry> Marked { get; init; } = [];

        public IReadOnlyList<string> Figures { get; init; } = [];
    }

    /// <summary>All such pairs. Some figure has its unit, or the field's label stands before or behind.</summary>
    public IEnumerable<Placement> All()
    {
        var marked = lexicon.Marked.FindAll(field => Enumerable.Range(0, plate.Count).Count(at => IsMark(at, field)) > 1);
        if (marked.Count == 0) yield break;
        for (var from = 0; from < plate.Count; from++)
        {
            if (plate.RunsOn(from)) continue;
            var isFigure = plate.Is(from, TokenKind.Number);
            if (!isFigure && plate.Words[from].Count == 0) continue;
            foreach (var field in marked)
            {
                var label = Label(from, field, null);
                var isMark = IsMark(from, field);
                foreach (var order in Orders)
                {
                    var begins = order is Marks.BeforeEach or Marks.BeforeBoth ? isMark : isFigure;
                    if (begins && Read(new(from, from, field), order) is { } bare) yield return bare;
                    if (label is { } end && Read(new(from, end, field, HasUnit: true), order) is { } labelled) yield return labelled;
                }
            }
        }
    }

    private bool IsMark(int at, Field field)
    {
        foreach (var (_, node) in plate.Words[at])
        {
            foreach (var mark in node.Marks)
            {
                if (mark.Field == field) return true;
            }
        }

        return false;
    }

    private Placement? Read(Walk start, Marks order)
    {
        var walk = order switch
        {
            Marks.BeforeEach => Figure(Mark(Figure(Mark(start)))),
            Marks.BehindEach => Mark(Figure(Mark(Figure(start)))),
            Marks.BeforeBoth => Figures(Mark(Mark(start))),
            _ => Mark(Mark(Figures(start))),
        };
        if (walk is null) return null;
        if (!walk.HasUnit && Label(walk.At, walk.Field, walk.At - 1) is { } end) walk = walk with { At = end, HasUnit = true };
        if (!walk.HasUnit || walk.Marked is not [var one, var other] || one.Marks != other.Marks || one.IsFirst == other.IsFirst) return null;
        var (first, second) = one.IsFirst ? (walk.Figures[0], walk.Figures[1]) : (walk.Figures[1], walk.Figures[0]);
        var unit = walk.Field.Form.UnitSpellings[0];
        if (IsLess(first, second) != one.Marks.FirstIsLess || reader.Read(walk.Field, $"{first} / {second}", unit) is not { } text) return null;
        var where = new Stretch(walk.From, walk.At);
        List<PlacedValue> values = [new(walk.Field, text, where)];
        if (one.Marks.Says is { } says) values.Add(new(lexicon.FieldOf(says.Name), says.Text, where));
        return new(walk.From, walk.At, LabelStands.Nowhere, 0, values);
    }

    /// <summary>A mark, and the field's label behind it: LOW VOLTS.</summary>
    private Walk? Mark(Walk? walk)
    {
        if (walk is null || !IsNext(walk) || plate.Words.Longest(walk.At, node => node.Marks.Exists(mark => mark.Field == walk.Field)) is not { } match) return null;
        var mark = match.Node.Marks.First(mark => mark.Field == walk.Field);
        var label = Label(match.End, walk.Field, walk.At);
        return walk with { At = label ?? match.End, HasUnit = walk.HasUnit || label is not null, Marked = [.. walk.Marked, mark] };
    }

    /// <summary>One figure, and its unit if it has one.</summary>
    private Walk? Figure(Walk? walk)
    {
        if (walk is null || !IsNext(walk) || !plate.Is(walk.At, TokenKind.Number) || plate.IsAtStop(walk.At)) return null;

        // The comma of 1,9 Δ is a decimal one, for a figure without a mark would be a third.
        var end = plate.Is(walk.At + 1, TokenKind.Number) && plate.Gap(walk.At + 1) is "," ? walk.At + 2 : walk.At + 1;
        return Behind(walk with { At = end, Figures = [.. walk.Figures, plate.Slice(walk.At, end).ToString()] });
    }

    /// <summary>Two figures with a slash between.</summary>
    private Walk? Figures(Walk? walk)
    {
        if (walk is null || !IsNext(walk)) return null;
        foreach (var end in reach.Ends(walk.At))
        {
            if (plate.Slice(walk.At, end).ToString().Split('/') is [var one, var other]) return Behind(walk with { At = end, Figures = [one.Trim(), other.Trim()] });
        }

        return null;
    }

    private Walk Behind(Walk walk) => reach.UnitEnd(walk.Field, walk.At) is { } unit && plate.SameLine(walk.At) ? walk with { At = unit, HasUnit = true } : walk;

    /// <summary>Whether what comes next stands beside what was taken, with nothing but a slash, a dash, a comma or a bracket between.</summary>
    private bool IsNext(Walk walk) => walk.At < plate.Count && (walk.At == walk.From || (plate.SameLine(walk.At) && Gaps.BesideMark(plate.Gap(walk.At))));

    /// <summary>The token behind a label of a field; null when there is none.</summary>
    private int? Label(int at, Field field, int? behind) =>
        at < plate.Count && (behind is null || plate.SameLine(at)) ? plate.Words.LongestLabel(at, field)?.End : null;

    /// <summary>Whether a figure, or the first of a span, is less than another.</summary>
    private static bool IsLess(string one, string other) =>
        TradeNumber.TryRead(one, fractions: false, signed: false, out var first, out _) && TradeNumber.TryRead(other, fractions: false, signed: false, out var second, out _) && first.Double < second.Double;
}
