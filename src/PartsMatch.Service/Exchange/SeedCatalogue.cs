using System.Globalization;
using System.Numerics;
using CsvHelper;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Hosting;
using PartsMatch.Store;

namespace PartsMatch.Service.Exchange;

/// <summary>Reads what a new store begins with: a table a family, one of supersessions, one of stock. A cell that is wrong refuses the start, with its file, line and column.</summary>
internal sealed class SeedCatalogue
{
    private const int MostComplaintsShown = 10;
    private static readonly string[] PartColumns = ["number", "maker", "title", "status"];

    private readonly SeedFiles _files;
    private readonly List<string> _complaints = [];

    private SeedCatalogue(SeedFiles files) => _files = files;

    /// <exception cref="StartRefusedException">A table cannot be read, or there is none.</exception>
    public static SeedData Read(string? folder) => new SeedCatalogue(SeedFiles.Of(folder)).Read();

    private SeedData Read()
    {
        var supersessions = Rows("supersessions.csv", Supersession).ToLookup(one => one.Number, one => one.By, StringComparer.Ordinal);
        var parts = Families.All
            .SelectMany(family => Rows($"{family.Kind}s.csv", (row, at) => Part(family, row, at)))
            .Select(part => part with { SupersededBy = [.. supersessions[part.Number]] })
            .ToList();
        var stock = Rows("stock.csv", Stock).ToList();
        if (parts.Count == 0) _complaints.Add($"there is no table of parts ({string.Join(", ", Families.All.Select(family => $"{family.Kind}s.csv"))})");
        return _complaints.Count == 0 ? new(_files.Source, parts, stock) : throw Refused();
    }

    private StartRefusedException Refused() => new(
        ExitCode.SeedRefused,
        string.Join(Environment.NewLine, [$"The store is new, and what it was to begin with ({_files.Source}) cannot be read:", .. _complaints.Take(MostComplaintsShown), .. _complaints.Count > MostComplaintsShown ? [$"and {_complaints.Count - MostComplaintsShown} more"] : (string[])[]]));

    private IEnumerable<T> Rows<T>(string name, Func<CsvRow, string, T> read)
    {
        using var text = _files.Open(name);
        if (text is null) return [];
        try
        {
            return [.. CsvRow.ReadAll(text).Select(row => read(row, FormattableString.Invariant($"{name}, line {row.Line}")))];
        }
        catch (CsvHelperException)
        {
            _complaints.Add($"{name}: not a table of comma-separated values with as many cells in every row");
            return [];
        }
    }

    private PartDraft Part(Family family, CsvRow row, string at)
    {
        var cells = row.Columns.Where(column => column.Value.Length > 0 && !PartColumns.Contains(column.Key, StringComparer.OrdinalIgnoreCase)).ToList();
        if (_files.AreChecked)
        {
            var complaints = family.ReadSpec(cells.Select(cell => new Fit.Judging.NamedText(cell.Key, cell.Value))).Complaints;
            _complaints.AddRange(complaints.Select(complaint => $"{at}, {complaint.Field}: {complaint.Message}"));
        }

        if (!Enum.TryParse<PartStatus>(row["status"], ignoreCase: true, out var status)) _complaints.Add($"{at}, status: one of {string.Join(", ", Enum.GetNames<PartStatus>())}");
        return new(row["number"], family.Kind, row["maker"], row["title"], status, [.. cells.Select(cell => new Store.NamedText(cell.Key, cell.Value))], []);
    }

    private (string Number, Supersession By) Supersession(CsvRow row, string at)
    {
        if (!DateOnly.TryParseExact(row["on"], "O", CultureInfo.InvariantCulture, DateTimeStyles.None, out var on)) _complaints.Add($"{at}, on: a date such as 2021-04-30");
        return (row["number"], new(row["supersededBy"], row["saidBy"], on));
    }

    private StockLine Stock(CsvRow row, string at) => new(
        row["number"],
        Number<decimal>(row, "price", at),
        row["currency"],
        Number<int>(row, "onHand", at));

    private T? Number<T>(CsvRow row, string column, string at)
        where T : struct, INumberBase<T>
    {
        if (row[column].Length == 0) return null;
        if (T.TryParse(row[column], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)) return number;
        _complaints.Add($"{at}, {column}: a number, written with a point");
        return null;
    }
}
