using System.Globalization;
using System.Text;

namespace PartsMatch.Fit.Quantities;

/// <summary>Characters that do not show, and change how a text is stored, printed or read aloud: no number, name or wording that is kept may hold one.</summary>
/// <remarks>
/// They are the control characters (C0, C1 and delete), the separators of lines and paragraphs, the signs that embed, override or isolate a direction of
/// writing (Unicode Standard Annex #9, explicit formatting; Unicode Technical Report #36 names them as a means to deceive), the byte order mark,
/// and halves of surrogate pairs. Marks and joiners that scripts need for their spelling are let be.
/// </remarks>
public static class UnseenSigns
{
    /// <summary>Names the first such character and where it stands, as a sentence that says what would be right; null when there is none.</summary>
    /// <param name="text">One line of text; blanks round it count.</param>
    public static string? Complaint(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (!text.AsSpan().ContainsAnyExceptInRange(' ', '~')) return null;
        for (var at = 0; at < text.Length; at++)
        {
            if (char.IsHighSurrogate(text[at]) && at + 1 < text.Length && char.IsLowSurrogate(text[at + 1])) at++;
            else if (IsUnseen(text[at])) return string.Create(CultureInfo.InvariantCulture, $"{Code(text[at])} ({Name(text[at])}) stands at character {at + 1}. {Right(text[at])}");
        }

        return null;
    }

    /// <summary>A text that may be printed: each such character by its code, ‹U+202E›.</summary>
    /// <param name="text">Any text.</param>
    public static string Shown(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (Complaint(text) is null) return text;
        var shown = new StringBuilder();
        for (var at = 0; at < text.Length; at++)
        {
            var isPair = char.IsSurrogatePair(text, at);
            if (!isPair && IsUnseen(text[at])) shown.Append('‹').Append(Code(text[at])).Append('›');
            else shown.Append(text, at, isPair ? 2 : 1);
            if (isPair) at++;
        }

        return shown.ToString();
    }

    private static bool IsUnseen(char sign) => char.IsControl(sign) || char.IsSurrogate(sign) || sign is '\u2028' or '\u2029' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') or '\uFEFF';

    private static string Code(char sign) => string.Create(CultureInfo.InvariantCulture, $"U+{(int)sign:X4}");

    /// <summary>The names of the Unicode Character Database, where it has one; else what the code chart calls it.</summary>
    private static string Name(char sign) => sign switch
    {
        '\u0000' => "null",
        '\t' => "tab",
        '\n' => "line feed",
        '\r' => "carriage return",
        '\u001B' => "escape",
        '\u2028' => "line separator",
        '\u2029' => "paragraph separator",
        '\u202A' => "left-to-right embedding",
        '\u202B' => "right-to-left embedding",
        '\u202C' => "pop directional formatting",
        '\u202D' => "left-to-right override",
        '\u202E' => "right-to-left override",
        '\u2066' => "left-to-right isolate",
        '\u2067' => "right-to-left isolate",
        '\u2068' => "first strong isolate",
        '\u2069' => "pop directional isolate",
        '\uFEFF' => "byte order mark",
        _ when char.IsSurrogate(sign) => "half of a surrogate pair",
        _ => "control character",
    };

    private static string Right(char sign) => sign is '\t' or '\n' or '\r' or '\u2028' or '\u2029' ? "Write one line, with a space there." : "It does not show: take it out.";
}
