using System.Globalization;
using System.Numerics;
using PartsMatch.Service.Counter;
using PartsMatch.Store;

namespace PartsMatch.Service.Exchange;

/// <summary>Prices and what is at hand: a table of its own, as they change hourly. The last word stands, so here is no conflict.</summary>
internal sealed class StockTable : CatalogueTable
{
    private const string Price = "price";
    private const string Currency = "currency";
    private const string OnHand = "onHand";

    public override string Kind => "stock";

    public override string FileName => "stock.csv";

    public override IReadOnlyList<string> Columns { get; } = [Number, Price, Currency, OnHand];

    public override IEnumerable<IEnumerable<string>> Rows(PartStore store) =>
        store.AllStock.Select(line => (IEnumerable<string>)[line.Number, .. Texts(line)]);

    public override IEnumerable<Judged> Judge(IEnumerable<SurveyedRow> rows, Beside beside, int longestCell) => rows.Select(row => Judge(row, beside.Catalogue));

    public override bool IsWhole(CsvRow row) => PartNumber.Complaint(row[Number].Trim()) is null && Read(row).Wrong.Count == 0;

    /// <summary>The line that a row says, with all that is wrong with it. A column that is not there leaves what is known.</summary>
    public static (StockLine Line, IReadOnlyList<RowComplaint> Wrong) Read(CsvRow row, StockLine? present = null)
    {
        var wrong = new List<RowComplaint>();
        var price = row.Has(Price) ? Figure<decimal>(row, Price, "A price is a number written with a point, such as 84.50.", wrong) : present?.Price;
        var onHand = row.Has(OnHand) ? Figure<int>(row, OnHand, "What is at hand is a whole number, such as 3.", wrong) : present?.OnHand;
        var currency = row.Has(Currency) ? row[Currency].Trim() : present?.Currency ?? string.Empty;
        var isCode = currency.Length == 3 && currency.All(char.IsAsciiLetterUpper);
        if (!isCode && (currency.Length > 0 || price is not null)) wrong.Add(new(Currency, currency.Length == 0 ? Codes.Empty : Codes.Unreadable, "A price needs its currency, three capital letters such as USD."));
        return (new(row[Number].Trim(), price, currency, onHand), wrong);
    }

    private static Judged Judge(SurveyedRow surveyed, CatalogueSnapshot catalogue)
    {
        var row = surveyed.Row;
        var number = row[Number].Trim();
        if (row.Wrong is { } malformed) return Judged.Bad(row, number, [malformed]);
        var present = catalogue.Stock(number);
        string[] known = present is null ? ["", "", ""] : Texts(present);
        var isThere = catalogue.Find(number) is not null;
        if (isThere && surveyed.Twice is null && Said(row, known).SequenceEqual(known, StringComparer.Ordinal)) return Judged.Same(row, number);

        var (line, unreadable) = Read(row, present);
        List<RowComplaint> wrong = [.. surveyed.Twice is { } twice ? [twice] : (RowComplaint[])[], .. isThere ? (RowComplaint[])[] : [NotFound(number)], .. unreadable];
        if (wrong.Count > 0) return Judged.Bad(row, number, wrong);
        if (present is not null && present with { Number = line.Number } == line) return Judged.Same(row, number);
        string[] columns = [Price, Currency, OnHand];
        var changes = columns.Zip(known, Texts(line)).Where(pair => pair.Second != pair.Third).Select(pair => new FieldChange(pair.First, pair.Second, pair.Third));
        return Judged.Of(row, number, present is null ? RowState.New : RowState.Changed, present is null ? [] : [.. changes], new AskedWrite.SetStock(line));
    }

    private static RowComplaint NotFound(string number) => new(Number, Codes.PartNotFound, Needs.NotFound(number, Number).Message);

    private static string[] Said(CsvRow row, string[] known) => [Said(row, Price, known[0]), Said(row, Currency, known[1]), Said(row, OnHand, known[2])];

    private static string Said(CsvRow row, string column, string known) => row.Has(column) ? row[column] : known;

    private static string[] Texts(StockLine line) => [line.Price?.ToString(CultureInfo.InvariantCulture) ?? string.Empty, line.Currency, line.OnHand?.ToString(CultureInfo.InvariantCulture) ?? string.Empty];

    private static T? Figure<T>(CsvRow row, string column, string expected, List<RowComplaint> wrong)
        where T : struct, INumberBase<T>
    {
        if (string.IsNullOrWhiteSpace(row[column])) return null;
        if (T.TryParse(row[column].Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)) return number;
        wrong.Add(new(column, Codes.Unreadable, expected));
        return null;
    }
}
