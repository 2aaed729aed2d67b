using PartsMatch.Service.Counter;

namespace PartsMatch.Service.Exchange.Lists;

/// <summary>A list of old parts, looked through once: what is wrong with it as a whole is known before any row is answered.</summary>
internal sealed class ListFile
{
    /// <summary>The row behind the header.</summary>
    public const int FirstRow = 2;

    private readonly CsvReader _reader;
    private readonly IReadOnlyList<string?> _siteFields;

    private ListFile(CsvReader reader) => (_reader, _siteFields) = (reader, [.. reader.Header.Select(ListColumns.SiteFieldOf)]);

    public IReadOnlyList<string> Header => _reader.Header;

    /// <summary>The number of the last row that is not blank; the header's when there is none.</summary>
    public int LastRow { get; private set; } = FirstRow - 1;

    /// <param name="bytes">The file.</param>
    /// <param name="limits">How much it may hold.</param>
    /// <param name="isKnown">Whether the catalogue has a number: where a quotation mark is left open, a line that begins a row with one ends it. A plate's text may be several lines.</param>
    public static Answer<ListFile> Open(ReadOnlyMemory<byte> bytes, ListLimits limits, Func<string, bool> isKnown)
    {
        if (ImportFile.WrongBytes(bytes.Span) is { } wrong) return new Refusal(Codes.NotATable, string.Empty, wrong);
        var file = new ListFile(new(bytes, row => row[ListColumns.Number] is { Length: > 0 } number && isKnown(number)));
        if (file._reader.HasWrongHeader) return new Refusal(Codes.NotATable, string.Empty, "A quotation mark in the first row is not closed, or stands inside a name. Names of columns need none.");
        if (ListColumns.Check(file.Header) is { Count: > 0 } refusals) return Answer<ListFile>.Refused(refusals);
        foreach (var row in file._reader.Rows()) file.LastRow = row.Number;
        var rows = file.LastRow - FirstRow + 1;
        return rows <= limits.Rows ? file : new Refusal(Codes.RequestTooLarge, string.Empty, FormattableString.Invariant($"A list has at most {limits.Rows} rows; this one has {rows}. Split it, and repeat the header."));
    }

    /// <summary>The rows from one on, blank ones too, so that each stands in the answer where it stands in the list.</summary>
    public IEnumerable<ListRow> Rows(int from)
    {
        var next = from;
        foreach (var row in _reader.Rows().Where(row => row.Number >= from))
        {
            while (next < row.Number) yield return ListRow.Blank(next++, Header.Count);
            yield return ListRow.Of(row, _siteFields);
            next++;
        }
    }
}
