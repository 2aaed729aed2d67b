using PartsMatch.Demo.Trade;

namespace PartsMatch.Demo.Outcomes;

/// <summary>A truth for any family: how much each field matters, from where on and beside which other is drawn, and no rule of the trade is asked.</summary>
internal static class FieldTruth
{
    /// <summary>Draws one.</summary>
    public static HiddenTruth Draw(FamilyCatalogue family, Draw draw)
    {
        List<HiddenRule> rules = [.. Enumerable.Range(0, family.Shape.Fields.Count).Select(field => RuleOf(field, draw))];
        var pairs = Math.Min(3, rules.Count / 2);
        return new(rules, [.. draw.Some([.. Enumerable.Range(0, rules.Count)], 2 * pairs).Chunk(2).Select(pair => (pair[0], pair[1], draw.Between(0.5, 2)))]);
    }

    /// <summary>How far a field of one part is off that of another: the logarithm of the ratio of figures, 1 where texts differ, 0 where one is not given.</summary>
    public static double Off(PartFigures old, PartFigures part, int field)
    {
        if (old.TextAt(field) is not { } before || part.TextAt(field) is not { } after || before == after) return 0;
        var ratio = Math.Abs(part.LogarithmAt(field) - old.LogarithmAt(field));
        return double.IsNaN(ratio) ? 1 : Math.Min(2, ratio);
    }

    private static HiddenRule RuleOf(int field, Draw draw) => new(
        (old, part, _) => Off(old, part, field),
        Threshold: draw.Between(0.05, 0.35),
        Softness: draw.Between(0.02, 0.08),
        Hazard: draw.Chance(0.4) ? draw.Between(0.01, 0.05) : draw.Between(0, 0.004),
        IsRework: draw.Chance(0.5));
}
