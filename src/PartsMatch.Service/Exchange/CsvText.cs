using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace PartsMatch.Service.Exchange;

/// <summary>Writes tables as text: commas, quotation marks where one is needed (RFC 4180), line feeds, one culture, formulas guarded against.</summary>
internal static class CsvText
{
    private const string NeedQuotes = ",\"\r\n;";

    /// <summary>Writes rows as they come, the first being the header.</summary>
    public static async Task WriteAsync(TextWriter text, IEnumerable<IEnumerable<string>> rows, CancellationToken stop)
    {
        await using var csv = On(text);
        foreach (var row in rows)
        {
            stop.ThrowIfCancellationRequested();
            await WriteRowAsync(csv, row);
        }
    }

    /// <summary>For rows that are written one by one.</summary>
    public static CsvWriter On(TextWriter text) => new(text, new CsvConfiguration(CultureInfo.InvariantCulture) { NewLine = "\n", ShouldQuote = NeedsQuotes }, leaveOpen: true);

    public static Task WriteRowAsync(CsvWriter csv, IEnumerable<string> row)
    {
        foreach (var cell in row) csv.WriteField(FormulaGuard.On(cell));
        return csv.NextRecordAsync();
    }

    /// <summary>A semicolon too, for spreadsheets that part cells by it; and blanks at the ends, which some take off.</summary>
    private static bool NeedsQuotes(ShouldQuoteArgs args) =>
        args.Field is { Length: > 0 } cell && (cell.AsSpan().ContainsAny(NeedQuotes) || char.IsWhiteSpace(cell[0]) || char.IsWhiteSpace(cell[^1]));
}
