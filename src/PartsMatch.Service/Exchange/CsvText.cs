using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace PartsMatch.Service.Exchange;

/// <summary>Tables as text: commas, quotation marks where one is needed (RFC 4180), line feeds, one culture, formulas guarded against.</summary>
internal static class CsvText
{
    private const string NeedQuotes = ",\"\r\n;";

    /// <summary>The first row's cells, as they stand; none when there is no row.</summary>
    public static (IReadOnlyList<string> Header, IEnumerable<CsvRow> Rows) Read(TextReader text)
    {
        var wrong = new Quoting();
        var parser = new CsvParser(text, new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            Mode = CsvMode.RFC4180,
            // Rows are counted as a spreadsheet does; blank ones are left out below.
            IgnoreBlankLines = false,
            CacheFields = true,
            BadDataFound = _ => wrong.IsFound = true,
        });
        if (!parser.Read())
        {
            parser.Dispose();
            return ([], []);
        }

        var header = CellsOf(parser).Select(name => name.Trim()).ToList();
        return (header, RowsOf(parser, header, wrong));
    }

    /// <summary>Writes rows as they come, the first being the header.</summary>
    public static async Task WriteAsync(TextWriter text, IEnumerable<IEnumerable<string>> rows, CancellationToken stop)
    {
        await using var csv = new CsvWriter(text, new CsvConfiguration(CultureInfo.InvariantCulture) { NewLine = "\n", ShouldQuote = NeedsQuotes }, leaveOpen: true);
        foreach (var row in rows)
        {
            stop.ThrowIfCancellationRequested();
            foreach (var cell in row) csv.WriteField(FormulaGuard.On(cell));
            await csv.NextRecordAsync();
        }
    }

    private static IEnumerable<CsvRow> RowsOf(CsvParser parser, List<string> header, Quoting wrong)
    {
        using (parser)
        {
            var places = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
            foreach (var (at, name) in header.Index()) places.TryAdd(name, at);
            while (parser.Read())
            {
                wrong.IsFound = false;
                var cells = CellsOf(parser);
                if (!cells.TrueForAll(string.IsNullOrWhiteSpace)) yield return new(parser.Row, places, cells, wrong.IsFound);
            }
        }
    }

    private static List<string> CellsOf(CsvParser parser)
    {
        var cells = new List<string>(parser.Count);
        for (var at = 0; at < parser.Count; at++) cells.Add(FormulaGuard.Off(parser[at]));
        return cells;
    }

    /// <summary>A semicolon too, for spreadsheets that part cells by it; and blanks at the ends, which some take off.</summary>
    private static bool NeedsQuotes(ShouldQuoteArgs args) =>
        args.Field is { Length: > 0 } cell && (cell.AsSpan().ContainsAny(NeedQuotes) || char.IsWhiteSpace(cell[0]) || char.IsWhiteSpace(cell[^1]));

    /// <summary>The parser tells of bad quotes while it hands out a row's cells.</summary>
    private sealed class Quoting
    {
        public bool IsFound { get; set; }
    }
}
