using PartsMatch.Fit;
using PartsMatch.Store;

namespace PartsMatch.Service.Exchange;

/// <summary>A row that was looked at, and what the rest of the file has against it.</summary>
internal sealed record SurveyedRow(CsvRow Row, RowComplaint? Twice);

/// <summary>A table in which a part of the catalogue goes out and comes in: one a family, one of stock, one of supersessions.</summary>
internal abstract class CatalogueTable
{
    public const string Number = "number";

    /// <summary>Every table, the families' first: what stock and supersessions speak of has to be there before them.</summary>
    public static IReadOnlyList<CatalogueTable> All { get; } = [.. Families.All.Select(family => new PartTable(family)), new StockTable(), new SupersessionTable()];

    /// <summary>Its name at every edge: motor, stock.</summary>
    public abstract string Kind { get; }

    public abstract string FileName { get; }

    /// <summary>Its columns, in the order in which they are written.</summary>
    public abstract IReadOnlyList<string> Columns { get; }

    /// <summary>Columns without which a file cannot be read. Where another is missing, the catalogue keeps what it has there.</summary>
    public virtual IReadOnlyList<string> Needed => [Number];

    /// <summary>Whether a number may stand in one row only.</summary>
    public virtual bool IsOncePerNumber => true;

    public static CatalogueTable? Find(string kind) => All.FirstOrDefault(table => table.Kind.Equals(kind, StringComparison.OrdinalIgnoreCase));

    /// <summary>Whether cells of the right number are a row of this table by what they say: where a quotation mark is left open, the next such line ends it.</summary>
    public abstract bool IsWhole(CsvRow row);

    /// <summary>All that the catalogue has of it, in the order of part numbers' keys; cells in the order of the columns.</summary>
    public abstract IEnumerable<IEnumerable<string>> Rows(CatalogueSnapshot catalogue);

    /// <summary>What rows say beside a catalogue. A row that says what the catalogue says is the same, whatever it holds: so an export always imports.</summary>
    public abstract IEnumerable<Judged> Judge(IEnumerable<SurveyedRow> rows, CatalogueSnapshot catalogue, int longestCell);
}
