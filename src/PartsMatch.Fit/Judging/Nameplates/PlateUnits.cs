using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>The unit that is meant where a label's figure has none: mostly the label's own, but on a plate in °C or bar that of the others.</summary>
internal sealed class PlateUnits
{
    /// <summary>What one of each unit is written as, by its spellings.</summary>
    private static readonly KnownReadings WrittenUnits = new();

    private readonly PlateText plate;
    private readonly FigureReach reach;
    private readonly Dictionary<string, string> meant = [];
    private readonly HashSet<Field> untold = [];

    /// <summary>Looks at the units of a plate's labelled figures.</summary>
    public PlateUnits(PlateText plate, Lexicon lexicon, FigureReach reach)
    {
        (this.plate, this.reach) = (plate, reach);
        foreach (var (scale, fields) in lexicon.UnlessOthers)
        {
            var given = Given(plate, lexicon, reach, fields);
            var others = given.FindAll(one => !AreOne(one.Field, one.Unit, scale.Unit) && !scale.Beside.Any(beside => AreOne(one.Field, one.Unit, beside)));
            var all = others.Count == 0 ? scale.Unit : others.Count < given.Count ? null : others.Select(one => one.Unit).FirstOrDefault(unit => fields.All(field => Written(field, unit) is not null) && others.TrueForAll(one => AreOne(one.Field, one.Unit, unit)));
            if (all is not null) meant[scale.Unit] = all;
            if (all is null || HasOthersInBrackets(plate, lexicon, reach, fields, all)) untold.UnionWith(fields);
        }
    }

    /// <summary>The unit that is meant instead of a label's.</summary>
    public string? Meant(string? unit) => unit is not null && meant.TryGetValue(unit, out var other) ? other : unit;

    /// <summary>The choice without figures that have no unit where the plate's others do not agree: RANGE 20-100 PSI PS 28 BAR CUT-IN 30. They are taken back only when all is read, so that no other figure slides into their place.</summary>
    public Choice TakenBack(Choice choice) => untold.Count == 0 ? choice : choice with { Certain = [.. choice.Certain.Select(one => Untold(one) is { } figure ? one.Asking(figure) : one)] };

    /// <summary>The figure of a reading, where no unit stands beside it.</summary>
    private Stretch? Untold(Placement one)
    {
        if (one.Values is not [{ } value, ..] || !untold.Contains(value.Field)) return null;
        var figures = Enumerable.Range(one.From, one.To - one.From).Where(at => plate.Is(at, TokenKind.Number)).ToList();
        return figures.Count == 0 || figures.Exists(at => reach.Ends(at).Exists(end => reach.UnitEnd(value.Field, end) is not null)) ? null : new(figures[0], figures[^1] + 1);
    }

    /// <summary>Whether a figure without a unit has one in brackets behind it that tells another unit than is meant, the °C of OPENS 13 (55 F): then the plate's others may have either.</summary>
    private static bool HasOthersInBrackets(PlateText plate, Lexicon lexicon, FigureReach reach, IReadOnlyList<Field> fields, string unit)
    {
        var repeated = new RepeatedFigures(plate, reach);
        if (!repeated.HasBrackets) return false;
        var labelled = Labelled(plate, lexicon, fields);
        return Enumerable.Range(0, plate.Count).Where(at => !plate.RunsOn(at)).Any(at => reach.Ends(at).Exists(end =>
        {
            if (!repeated.OpensBracket(end)) return false;
            var closed = fields.Select(field => (Field: field, End: repeated.InBrackets(field, end))).Where(one => one.End is { } behind && ((labelled[at] && plate.SameLine(at)) || labelled[behind])).ToList();
            return closed.Exists(one => repeated.MayRepeat(one.Field, at, end, one.End!.Value)) && !closed.Exists(one => repeated.RepeatsIn(one.Field, unit, at, end, one.End!.Value));
        }));
    }

    /// <summary>Where labels of some fields begin, and the tokens behind them.</summary>
    private static bool[] Labelled(PlateText plate, Lexicon lexicon, IReadOnlyList<Field> fields)
    {
        var labelled = new bool[plate.Count + 1];
        for (var at = 0; at < plate.Count; at++)
        {
            foreach (var (end, node) in plate.Words[at])
            {
                if (node.Labels.Exists(label => fields.Contains(label.Field))) (labelled[at], labelled[end]) = (true, true);
            }
        }

        return labelled;
    }

    /// <summary>The units beside figures that have a label of one of some fields before or behind them, and do not repeat another, OPENS 55 F (13 C), OPENS 55 (13 C).</summary>
    private static List<(Field Field, string Unit)> Given(PlateText plate, Lexicon lexicon, FigureReach reach, IReadOnlyList<Field> fields)
    {
        var given = new List<(Field, string)>();
        var labelled = Labelled(plate, lexicon, fields);
        var repeated = new RepeatedFigures(plate, reach);
        for (var at = 0; at < plate.Count; at++)
        {
            foreach (var end in plate.RunsOn(at) ? [] : reach.Ends(at))
            {
                foreach (var field in fields)
                {
                    if (reach.UnitEnd(field, end) is { } to && ((labelled[at] && plate.SameLine(at)) || (labelled[to] && (to == plate.Count || plate.SameLine(to)))) && !fields.Any(other => repeated.Repeats(other, at, to)) && !(reach.BareBefore(0, at) is not null && repeated.InBrackets(field, at) == to)) given.Add((field, plate.Slice(end, to).ToString()));
                }
            }
        }

        return given;
    }

    /// <summary>Whether two spellings are one unit: F and °F.</summary>
    public static bool AreOne(Field field, string one, string other) => Written(field, one) is { } text && text == Written(field, other);

    private static string? Written(Field field, string unit)
    {
        var known = WrittenUnits.Of(field, unit: null);
        if (known.TryGetValue(unit, out var written)) return written;
        return WrittenUnits.Keep(known, unit, field.Form.ReadAny($"1 {unit}") is { IsRead: true } value ? field.Form.WriteAny(value.Value, Units.AsGiven) : null);
    }
}
