using System.Text;
using System.Text.Unicode;
using PartsMatch.Fit.Quantities;
using PartsMatch.Service.Counter;

namespace PartsMatch.Service.Exchange;

/// <summary>A file that is a table of ours, looked through once: what is wrong with it as a whole is known before any row is judged.</summary>
internal sealed class ImportFile
{
    private const int MostRowsNamed = 5;

    private readonly CsvReader _reader;
    private readonly CatalogueTable _table;
    private readonly Dictionary<string, List<int>> _rowsOf = new(StringComparer.Ordinal);

    private ImportFile(CsvReader reader, CatalogueTable table, IReadOnlyList<string> notes) => (_reader, _table, Notes) = (reader, table, notes);

    /// <summary>What is to be known of it, though it keeps nothing from being read.</summary>
    public IReadOnlyList<string> Notes { get; }

    public int RowCount { get; private set; }

    public static Answer<ImportFile> Open(ReadOnlyMemory<byte> bytes, CatalogueTable table, ExchangeLimits limits)
    {
        if (bytes.Length > limits.Bytes) return new Refusal(Codes.RequestTooLarge, string.Empty, FormattableString.Invariant($"A file has at most {limits.Bytes} bytes. Split it, and repeat the header."));
        if (WrongBytes(bytes.Span) is { } wrong) return new Refusal(Codes.NotATable, string.Empty, wrong);
        var reader = new CsvReader(bytes, table.IsWhole);
        var (missing, refusals) = TableColumns.Check(reader.Header, table);
        if (reader.HasWrongHeader) refusals = [new(Codes.NotATable, string.Empty, "A quotation mark in the first row is not closed, or stands inside a name. Names of columns need none."), .. refusals];
        if (refusals.Count > 0) return Answer<ImportFile>.Refused(refusals);

        List<string> notes = [];
        if (reader.HasMark) notes.Add("The file begins with a byte order mark; it says nothing here and is left aside.");
        if (missing.Count > 0) notes.Add($"The file has no column {string.Join(", ", missing)}: the catalogue keeps what it has there, and of a new number it is unknown.");
        var file = new ImportFile(reader, table, notes);
        foreach (var row in reader.Rows())
        {
            if (++file.RowCount > limits.Rows) return new Refusal(Codes.RequestTooLarge, string.Empty, FormattableString.Invariant($"A file has at most {limits.Rows} rows. Split it, and repeat the header."));
            if (table.IsOncePerNumber) file.Note(row);
        }

        return file;
    }

    public IEnumerable<SurveyedRow> Rows()
    {
        foreach (var row in _reader.Rows()) yield return new(row, TwiceOf(row));
    }

    private void Note(CsvRow row)
    {
        if (_table.KeyOf(row) is not { Length: > 0 } key || row.Wrong is not null) return;
        if (_rowsOf.TryGetValue(key, out var rows)) rows.Add(row.Number);
        else _rowsOf.Add(key, [row.Number]);
    }

    /// <summary>Which of several rows is meant nobody can tell, so none of them is taken.</summary>
    private RowComplaint? TwiceOf(CsvRow row) =>
        _rowsOf.TryGetValue(_table.KeyOf(row), out var rows) && rows.Count > 1
            ? new(_table.KeyColumn, Codes.GivenTwice, $"{UnseenSigns.Shown(row[_table.KeyColumn].Trim())} stands in rows {string.Join(", ", rows.Take(MostRowsNamed))}{(rows.Count > MostRowsNamed ? " and more" : string.Empty)}. Leave one of them.")
            : null;

    /// <summary>What keeps bytes from being a text that is read here.</summary>
    public static string? WrongBytes(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith("PK\u0003\u0004"u8)) return "This is a spreadsheet's own file, not a table as text. Save it as CSV in UTF-8.";
        if (bytes.StartsWith(Encoding.Unicode.Preamble) || bytes.StartsWith(Encoding.BigEndianUnicode.Preamble)) return "The file is in UTF-16. Save it as CSV in UTF-8.";
        if (Utf8.IsValid(bytes)) return null;
        var line = 1;
        while (Rune.DecodeFromUtf8(bytes, out var letter, out var length) == System.Buffers.OperationStatus.Done)
        {
            if (letter.Value == '\n') line++;
            bytes = bytes[length..];
        }

        return FormattableString.Invariant($"The file is not in UTF-8: line {line} holds a byte that is no letter there. Save it as CSV in UTF-8.");
    }
}
