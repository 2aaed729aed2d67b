using PartsMatch.Service.Counter;

namespace PartsMatch.Service.Exchange;

/// <summary>A quotation mark that is wrong.</summary>
/// <param name="Cell">In which cell it stands.</param>
/// <param name="IsOpen">Whether it opens the cell and nothing closes it; else it stands where none can.</param>
internal sealed record CsvFault(int Cell, bool IsOpen);

/// <summary>A row of a table, by the names of its columns. Its cells are made into text when they are asked for.</summary>
/// <param name="Number">Its number in the file as spreadsheets count, the header being 1.</param>
/// <param name="Columns">The columns' names, and at which place each stands.</param>
/// <param name="File">The file's bytes.</param>
/// <param name="Places">Where its cells stand in the file; there may be more or fewer than columns.</param>
/// <param name="Fault">A quotation mark that is wrong, if one is.</param>
internal sealed record CsvRow(int Number, IReadOnlyDictionary<string, int> Columns, ReadOnlyMemory<byte> File, CsvCell[] Places, CsvFault? Fault)
{
    private const string HowToQuote = "Put the whole cell in quotation marks, and double those inside it: \"motor 5\"\" deep\".";

    /// <summary>The text of a column; empty where nothing is written.</summary>
    public string this[string column] => Columns.TryGetValue(column, out var at) && at < Places.Length ? Places[at].Text(File.Span) : string.Empty;

    public IReadOnlyList<string> Cells => Array.ConvertAll(Places, place => place.Text(File.Span));

    public bool IsBlank => Array.TrueForAll(Places, place => place.IsBlank(File.Span));

    public bool Has(string column) => Columns.ContainsKey(column);

    /// <summary>What keeps its cells from being told apart.</summary>
    public RowComplaint? Wrong =>
        Fault is { IsOpen: true } ? new(ColumnAt(Fault.Cell), Codes.RowMalformed, $"A quotation mark opens this cell and is not closed before the line ends, so the next line was read as a row of its own. {HowToQuote}")
        : Fault is not null ? new(ColumnAt(Fault.Cell), Codes.RowMalformed, $"A quotation mark stands inside this cell, where none can. {HowToQuote}")
        : Places.Length != Columns.Count ? new(string.Empty, Codes.RowMalformed, FormattableString.Invariant($"The row has {(Places.Length > CsvScan.MostCells ? "more than " : string.Empty)}{Math.Min(Places.Length, CsvScan.MostCells)} cells, and the header names {Columns.Count} columns. A text with a comma in it has to stand in quotation marks."))
        : null;

    private string ColumnAt(int cell) => Columns.FirstOrDefault(column => column.Value == cell).Key ?? string.Empty;
}
