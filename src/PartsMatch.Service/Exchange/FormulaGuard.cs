namespace PartsMatch.Service.Exchange;

/// <summary>Keeps a cell from becoming a formula in a spreadsheet: an apostrophe goes before a text that could begin one, and comes off again when it is read.</summary>
/// <remarks>
/// The signs are OWASP's ("CSV Injection"), with the wide ones that some spreadsheets take alike. A text that looks guarded already
/// is guarded once more, so that every text comes back exactly; any other apostrophe is left alone.
/// </remarks>
internal static class FormulaGuard
{
    private const char Guard = '\'';
    private const string Dangerous = "=+-@\t\r\n＝＋－＠";

    public static string On(string text) => NeedsGuard(text, at: 0) ? Guard + text : text;

    public static string Off(string cell) => cell.Length > 1 && cell[0] == Guard && NeedsGuard(cell, at: 1) ? cell[1..] : cell;

    /// <summary>What begins a formula does, and so does a guard before something that needs one.</summary>
    private static bool NeedsGuard(string text, int at)
    {
        while (at < text.Length && text[at] == Guard) at++;
        return at < text.Length && Dangerous.Contains(text[at], StringComparison.Ordinal);
    }
}
