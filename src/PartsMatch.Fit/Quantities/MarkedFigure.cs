namespace PartsMatch.Fit.Quantities;

/// <summary>One figure of a capacitor's marking.</summary>
/// <param name="Number">The figure.</param>
/// <param name="Joiner">What parts it from the one before: '+', '/', or ' ' for the first and where a unit stands between; commas and @ count as '/'.</param>
/// <param name="Unit">The unit beside it; empty when there is none.</param>
internal sealed record MarkedFigure(TradeNumber Number, char Joiner, string Unit)
{
    /// <summary>No marking has more: two sections and two voltages.</summary>
    private const int Most = 4;

    /// <summary>Whether its unit is one of capacitance.</summary>
    public bool IsCapacitance => Unit.Length > 0 && QuantityForms.Capacitance.UnitOf(Unit) is not null;

    /// <summary>Whether its unit is one of voltage.</summary>
    public bool IsVolts => Unit.Length > 0 && QuantityForms.Volts.UnitOf(Unit) is not null;

    /// <summary>Reads all figures, each with the unit behind it, or before it where the text begins with one.</summary>
    /// <returns>False when the text is no such list, or figures stand side by side with nothing between.</returns>
    public static bool TryRead(ReadOnlySpan<char> text, out List<MarkedFigure> figures)
    {
        figures = [];
        var rest = text;
        var (joiner, unit) = Between(ref rest);
        var unitsFirst = unit.Length > 0;
        while (TradeNumber.TryRead(rest, fractions: false, signed: false, out var number, out var length) && figures.Count < Most)
        {
            rest = rest[length..];
            var (next, behind) = Between(ref rest);
            figures.Add(new(number, figures.Count == 0 ? ' ' : joiner, unitsFirst ? unit : behind));
            if (rest.IsEmpty) return figures.TrueForAll(figure => figure.Unit.Length == 0 || figure.IsCapacitance || figure.IsVolts) && next == ' ' && !(unitsFirst && behind.Length > 0);
            if (next == ' ' && behind.Length == 0) return false;
            (joiner, unit) = (next, behind);
        }

        return false;
    }

    /// <summary>Takes what stands before the next digit: a sign, a unit, or both in either order.</summary>
    private static (char Joiner, string Unit) Between(ref ReadOnlySpan<char> rest)
    {
        var end = rest.IndexOfAnyInRange('0', '9');
        if (end < 0) end = rest.Length;
        if (end > 0 && end < rest.Length && rest[end - 1] == '.') end--;
        var between = rest[..end].Trim().ToString();
        rest = rest[end..];
        return between switch
        {
            [.. var unit, '/' or '@' or ','] => ('/', unit.TrimEnd()),
            [.. var unit, '+'] => ('+', unit.TrimEnd()),
            [.. var unit, '-'] => ('-', unit.TrimEnd()),
            ['/' or '@' or ',', .. var unit] => ('/', unit.TrimStart()),
            _ => (' ', between),
        };
    }
}
