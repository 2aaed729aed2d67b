using PartsMatch.Service.Counter;
using PartsMatch.Service.Hosting;
using PartsMatch.Store;

namespace PartsMatch.Service.Exchange;

/// <summary>Reads what a new store begins with: the tables of an import, as files. A cell that is wrong refuses the start, with its file, row and column.</summary>
internal sealed class SeedCatalogue
{
    private const int MostComplaintsShown = 10;

    private readonly SeedFiles _files;
    private readonly List<string> _complaints = [];

    private SeedCatalogue(SeedFiles files) => _files = files;

    /// <exception cref="StartRefusedException">A table cannot be read, or there is none.</exception>
    public static SeedData Read(string? folder) => new SeedCatalogue(SeedFiles.Of(folder)).Read();

    private SeedData Read()
    {
        var families = CatalogueTable.All.OfType<PartTable>().ToList();
        var supersessions = Rows(CatalogueTable.All.OfType<SupersessionTable>().Single(), row => (Number: row[CatalogueTable.Number], Read: SupersessionTable.Read(row)), one => one.Read.Wrong)
            .ToLookup(one => one.Number, one => one.Read.By, StringComparer.Ordinal);
        var parts = families.SelectMany(table => Rows(table, row => Part(table, row), one => one.Wrong))
            .Select(one => one.Draft with { SupersededBy = [.. supersessions[one.Draft.Number]] })
            .ToList();
        var stock = Rows(CatalogueTable.All.OfType<StockTable>().Single(), row => StockTable.Read(row), one => one.Wrong).Select(one => one.Line).ToList();
        var outcomes = Outcomes(parts);
        if (parts.Count == 0) _complaints.Add($"there is no table of parts ({string.Join(", ", families.Select(table => table.FileName))})");
        return _complaints.Count == 0 ? new(_files.Source, parts, stock) { Outcomes = outcomes } : throw Refused();
    }

    private StartRefusedException Refused() => new(
        ExitCode.SeedRefused,
        string.Join(Environment.NewLine, [$"The store is new, and what it was to begin with ({_files.Source}) cannot be read:", .. _complaints.Take(MostComplaintsShown), .. _complaints.Count > MostComplaintsShown ? [$"and {_complaints.Count - MostComplaintsShown} more"] : (string[])[]]));

    private List<T> Rows<T>(CatalogueTable table, Func<CsvRow, T> read, Func<T, IReadOnlyList<RowComplaint>> wrongOf)
    {
        if (_files.Read(table.FileName) is not { } bytes) return [];
        var all = new List<T>();
        foreach (var row in new CsvReader(bytes, table.IsWhole).Rows())
        {
            var at = FormattableString.Invariant($"{table.FileName}, row {row.Number}");
            var one = read(row);
            if (row.Wrong is { } wrong) _complaints.Add($"{at}{(wrong.Column.Length > 0 ? $", {wrong.Column}" : string.Empty)}: {wrong.Message}");
            else _complaints.AddRange(wrongOf(one).Select(complaint => $"{at}, {complaint.Column}: {complaint.Message}"));
            all.Add(one);
        }

        return all;
    }

    private List<OutcomeDraft> Outcomes(List<PartDraft> parts)
    {
        var byKey = new Lazy<ILookup<string, PartDraft>>(() => parts.ToLookup(part => PartNumber.Key(part.Number), StringComparer.Ordinal));
        var reading = new OutcomeReading(number => byKey.Value[PartNumber.Key(number)].FirstOrDefault() is { } part ? StoredPart.From(part, version: 1) : null, today: null, _files.AreChecked);
        var before = new OutcomesSoFar();
        return [.. Rows(CatalogueTable.All.OfType<OutcomeTable>().Single(), Outcome, one => OutcomeTable.Complaints(one.Refusals)).Select(one => one.Value).OfType<OutcomeDraft>()];

        Answer<OutcomeDraft> Outcome(CsvRow row)
        {
            var read = OutcomeTable.Read(row, reading);
            return read.IsGiven && before.Add(read.Value) is { } refusal ? refusal : read;
        }
    }

    private (PartDraft Draft, IReadOnlyList<RowComplaint> Wrong) Part(PartTable table, CsvRow row)
    {
        var spec = PartTable.SpecOf(row);
        var complaints = _files.AreChecked ? table.Family.ReadSpec(spec.Select(cell => new Fit.Judging.NamedText(cell.Name, cell.Text))).Complaints : [];
        List<RowComplaint> wrong = [.. complaints.Select(complaint => new RowComplaint(complaint.Field, complaint.Code, complaint.Message))];
        if (!PartTable.TryRead(row[PartTable.Status], out var status)) wrong.Add(new(PartTable.Status, Codes.Unreadable, PartTable.StatusExpected));
        return (new(row[CatalogueTable.Number], table.Kind, row[PartTable.Maker], row[PartTable.Title], status, spec, []), wrong);
    }
}
