namespace PartsMatch.Service.Exchange;

/// <summary>A row of a table, by the names of its columns.</summary>
/// <param name="Number">Its number in the file as spreadsheets count, the header being 1.</param>
/// <param name="Columns">The columns' names, and at which place each stands.</param>
/// <param name="Cells">Its cells; there may be more or fewer than columns.</param>
/// <param name="IsQuotedWrongly">Whether a quotation mark stands where none can.</param>
internal sealed record CsvRow(int Number, IReadOnlyDictionary<string, int> Columns, IReadOnlyList<string> Cells, bool IsQuotedWrongly)
{
    /// <summary>The text of a column; empty where nothing is written.</summary>
    public string this[string column] => Columns.TryGetValue(column, out var at) && at < Cells.Count ? Cells[at] : string.Empty;

    public bool Has(string column) => Columns.ContainsKey(column);

    /// <summary>What keeps its cells from being told apart.</summary>
    public string? Wrong =>
        IsQuotedWrongly ? "A quotation mark is not closed, or stands inside a cell that does not begin with one. Put the cell in quotation marks, and double those inside it."
        : Cells.Count != Columns.Count ? FormattableString.Invariant($"The row has {Cells.Count} cells, and the header names {Columns.Count} columns. A text with a comma in it has to stand in quotation marks.")
        : null;
}
