using System.Globalization;

namespace PartsMatch.Fit.Quantities;

/// <summary>A number as the trade writes it: 1075, 2.1, .5, 0,37, 1/4, 1-1/2, 1 1/2.</summary>
/// <param name="Double">Its value, correctly rounded.</param>
/// <param name="Decimal">The same, for quantities that are kept in decimal.</param>
public readonly record struct TradeNumber(double Double, decimal Decimal)
{
    /// <summary>What it is divided by where it was written as a fraction: 4 of 1-1/4; 0 where it was not.</summary>
    public int Denominator { get; init; }

    /// <summary>No figure on a plate is longer; longer digit strings are refused rather than rounded, and what is read fits a decimal.</summary>
    private const int MostDigits = 25;

    /// <summary>A decimal holds 28 digits behind its point, and a third of a horsepower needs them all to read back.</summary>
    private const int MostDigitsBehindPoint = 28;

    /// <summary>To the last bit, and without an exponent, which nobody writes: 0.0000685, not 6.85E-05.</summary>
    public static string Write(double number)
    {
        var shortest = number.ToString("R", CultureInfo.InvariantCulture);
        return shortest.Contains('E', StringComparison.Ordinal) && decimal.TryParse(shortest, NumberStyles.Float, CultureInfo.InvariantCulture, out var exact)
            ? exact.ToString("0.#############################", CultureInfo.InvariantCulture)
            : shortest;
    }

    /// <summary>Reads a number at the start of a text.</summary>
    /// <param name="text">The text; reading starts at its first character.</param>
    /// <param name="fractions">Whether 1/4 is a quarter (horsepower, inches) rather than two figures.</param>
    /// <param name="signed">Whether a minus may stand before it (temperatures).</param>
    /// <param name="number">The number read.</param>
    /// <param name="length">How many characters it took.</param>
    /// <returns>False when no number stands there, a denominator is zero, or a comma could mean either thousand or decimal.</returns>
    public static bool TryRead(ReadOnlySpan<char> text, bool fractions, bool signed, out TradeNumber number, out int length)
    {
        number = default;
        length = 0;
        var at = 0;
        var negative = false;
        if (signed && text.Length > 0 && text[0] is '-' or '−' or '+')
        {
            negative = text[0] != '+';
            at = 1;
        }

        var digits = Digits(text[at..]);
        if (digits > MostDigits) return false;
        if (fractions && digits > 0 && TryReadFraction(text[at..], digits, out number, out var taken))
        {
            length = at + taken;
        }
        else if (!TryReadDecimal(text[at..], digits, out number, out taken))
        {
            return false;
        }
        else
        {
            length = at + taken;
        }

        if (negative) number = new(-number.Double, -number.Decimal) { Denominator = number.Denominator };
        return true;
    }

    /// <summary>1/4, 1-1/2, 1 1/2 or 1 / 4, starting with a whole number of the given length.</summary>
    private static bool TryReadFraction(ReadOnlySpan<char> text, int digits, out TradeNumber number, out int length)
    {
        number = default;
        length = 0;
        var whole = 0m;
        var at = 0;
        var rest = text[digits..];
        if (rest.Length > 1 && rest[0] is '-' or ' ' && Digits(rest[1..]) is var numeratorDigits and > 0
            && Slash(rest[(1 + numeratorDigits)..]) > 0)
        {
            whole = Whole(text[..digits]);
            at = digits + 1;
            digits = numeratorDigits;
        }

        var slash = Slash(text[(at + digits)..]);
        var below = Digits(text[(at + digits + slash)..]);
        if (slash == 0 || digits > 3 || below is 0 or > 3) return false;
        var numerator = Whole(text.Slice(at, digits));
        var denominator = Whole(text.Slice(at + digits + slash, below));
        if (denominator == 0 || (whole > 0 && numerator >= denominator)) return false;
        length = at + digits + slash + below;
        if (slash > 1 && (!FractionText.IsUsual((int)numerator, (int)denominator) || GoesOn(text[length..]))) return false;
        number = new((double)whole + ((double)numerator / (double)denominator), whole + (numerator / denominator)) { Denominator = (int)denominator };
        return true;
    }

    /// <summary>How long a slash is with the spaces about it; 0 when there is none.</summary>
    private static int Slash(ReadOnlySpan<char> text)
    {
        var before = Spaces(text);
        return before < text.Length && text[before] == '/' ? before + 1 + Spaces(text[(before + 1)..]) : 0;
    }

    /// <summary>Whether a figure that stands apart behind a slash is no denominator, for it is not whole or is itself divided: 1 / 2.5, 1 / 2-1/2, 3 / 4/5.</summary>
    private static bool GoesOn(ReadOnlySpan<char> behind)
    {
        if (behind.Length < 2 || Digits(behind[1..]) is not (> 0 and var digits)) return false;
        return behind[0] is '.' or ',' or '/' || (behind[0] is '-' or ' ' && behind[(1 + digits)..] is ['/', >= '0' and <= '9', ..]);
    }

    private static bool TryReadDecimal(ReadOnlySpan<char> text, int digits, out TradeNumber number, out int length)
    {
        number = default;
        length = digits;
        if (digits < text.Length && text[digits] is '.' or ',' && Digits(text[(digits + 1)..]) is var after and > 0)
        {
            // 1,075 may be a thousand and seventy-five or one and a bit: no guess. 0,37 and 2,6 can only be decimals.
            if (text[digits] == ',' && after == 3 && digits is >= 1 and <= 3 && text[0] != '0') return false;
            length = digits + 1 + after;
            if (after > MostDigitsBehindPoint) return false;
        }

        if (length == 0) return false;
        var written = text[..length].ToString().Replace(',', '.');
        number = new(
            double.Parse(written, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture),
            decimal.Parse(written, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture));
        return true;
    }

    private static int Digits(ReadOnlySpan<char> text)
    {
        var count = 0;
        while (count < text.Length && char.IsAsciiDigit(text[count])) count++;
        return count;
    }

    private static int Spaces(ReadOnlySpan<char> text) => text.Length - text.TrimStart().Length;

    private static decimal Whole(ReadOnlySpan<char> digits) => decimal.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);
}
