using PartsMatch.Fit;
using PartsMatch.Store;

namespace PartsMatch.Service.Exchange;

/// <summary>A row that was looked at, and what the rest of the file has against it.</summary>
internal sealed record SurveyedRow(CsvRow Row, RowComplaint? Twice);

/// <summary>A table in which a part of the catalogue goes out and comes in: one a family, one of stock, one of supersessions, and one of what became of parts.</summary>
internal abstract class CatalogueTable
{
    public const string Number = "number";

    /// <summary>Every table, the families' first: what the others speak of has to be there before them.</summary>
    public static IReadOnlyList<CatalogueTable> All { get; } = [.. Families.All.Select(family => new PartTable(family)), new StockTable(), new SupersessionTable(), new OutcomeTable()];

    /// <summary>Its name at every edge: motor, stock.</summary>
    public abstract string Kind { get; }

    public abstract string FileName { get; }

    /// <summary>Its columns, in the order in which they are written.</summary>
    public abstract IReadOnlyList<string> Columns { get; }

    /// <summary>Columns without which a file cannot be read. Where another is missing, the catalogue keeps what it has there.</summary>
    public virtual IReadOnlyList<string> Needed => [Number];

    /// <summary>The column that says which entry a row is of.</summary>
    public virtual string KeyColumn => Number;

    /// <summary>Whether an entry may stand in one row only.</summary>
    public virtual bool IsOncePerNumber => true;

    /// <summary>Which entry a row is of, the same for all spellings of it; empty where the row does not say.</summary>
    public virtual string KeyOf(CsvRow row) => PartNumber.Key(row[Number]);

    public static CatalogueTable? Find(string kind) => All.FirstOrDefault(table => table.Kind.Equals(kind, StringComparison.OrdinalIgnoreCase));

    /// <summary>Whether cells of the right number are a row of this table by what they say: where a quotation mark is left open, the next such line ends it.</summary>
    public abstract bool IsWhole(CsvRow row);

    /// <summary>All that the store has of it, in an order of the table's own; cells in the order of the columns.</summary>
    public abstract IEnumerable<IEnumerable<string>> Rows(PartStore store);

    /// <summary>What rows say beside what is known. A row that says what is known is the same, whatever it holds: so an export always imports.</summary>
    public abstract IEnumerable<Judged> Judge(IEnumerable<SurveyedRow> rows, Beside beside, int longestCell);
}
