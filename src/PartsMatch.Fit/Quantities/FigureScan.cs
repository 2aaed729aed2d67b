namespace PartsMatch.Fit.Quantities;

/// <summary>Reads numbers that stand side by side before one unit: 115/208-230 V, 3/4-1/3 hp, 115 V / 230 V.</summary>
internal static class FigureScan
{
    /// <summary>No plate has more rating rows than this; a longer list is a slip.</summary>
    private const int MostFigures = 12;

    /// <summary>A number and what joins it to the one before: '/' or '-' or 't' for "to"; ' ' for the first.</summary>
    internal readonly record struct Joined(TradeNumber Number, char Joiner);

    /// <summary>Reads all numbers of a text; what is left is its unit.</summary>
    /// <param name="text">The whole text.</param>
    /// <param name="fractions">Whether 1/4 is a quarter.</param>
    /// <param name="isUnit">Whether a text spells a unit, which may then stand behind every number.</param>
    /// <param name="figures">The numbers, each with what joins it to the one before.</param>
    /// <param name="unit">The unit's text; empty when there is none.</param>
    /// <returns>False when the text is no such list.</returns>
    public static bool TryRead(ReadOnlySpan<char> text, bool fractions, Func<string, bool> isUnit, out List<Joined> figures, out string unit)
    {
        figures = [];
        unit = string.Empty;
        var rest = text.Trim();
        var joiner = ' ';
        while (TradeNumber.TryRead(rest, fractions, signed: false, out var number, out var length))
        {
            figures.Add(new(number, joiner));
            rest = rest[length..].TrimStart();
            if (figures.Count > MostFigures) return false;
            if (!TryReadJoiner(ref rest, isUnit, ref unit, out joiner))
            {
                var last = rest.ToString();
                if (unit.Length > 0 && !unit.Equals(last, StringComparison.OrdinalIgnoreCase)) return false;
                unit = last;
                return true;
            }
        }

        return false;
    }

    /// <summary>Takes a joiner, with a unit before it if one stands there, when a number follows.</summary>
    private static bool TryReadJoiner(ref ReadOnlySpan<char> rest, Func<string, bool> isUnit, ref string unit, out char joiner)
    {
        joiner = ' ';
        for (var at = 0; at < rest.Length; at++)
        {
            var (found, width) = rest[at..] switch
            {
                ['/' or ',' or ';' or '&' or '|', ..] => ('/', 1),
                ['-' or '–', ..] => ('-', 1),
                [' ', 't' or 'T', 'o' or 'O', ' ', ..] => ('t', 4),
                ['t' or 'T', 'o' or 'O', ' ', ..] when at == 0 => ('t', 3),
                _ => (' ', 0),
            };
            if (width == 0) continue;
            var between = rest[..at].Trim();
            var after = rest[(at + width)..].TrimStart();
            if (after.IsEmpty || !(char.IsAsciiDigit(after[0]) || after[0] == '.')) continue;
            if (!between.IsEmpty)
            {
                if (!isUnit(between.ToString()) || (unit.Length > 0 && !between.Equals(unit, StringComparison.OrdinalIgnoreCase))) return false;
                unit = between.ToString();
            }

            joiner = found;
            rest = after;
            return true;
        }

        return false;
    }
}
