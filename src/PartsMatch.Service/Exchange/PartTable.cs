using PartsMatch.Fit.Judging;
using PartsMatch.Store;
using NamedText = PartsMatch.Store.NamedText;

namespace PartsMatch.Service.Exchange;

/// <summary>A family's parts: number, maker, title, status, then every field of the spec.</summary>
internal sealed class PartTable(Family family) : CatalogueTable
{
    public const string Maker = "maker";
    public const string Title = "title";
    public const string Status = "status";

    private static readonly string[] Head = [Number, Maker, Title, Status];

    public static string StatusExpected { get; } = $"A status is one of {string.Join(", ", Enum.GetValues<PartStatus>().Select(TextOf))}.";

    public Family Family => family;

    public override string Kind => family.Kind;

    public override string FileName => $"{family.Kind}s.csv";

    public override IReadOnlyList<string> Columns { get; } = [.. Head, .. family.SpecShape.Fields.Select(field => field.Name)];

    public override IEnumerable<IEnumerable<string>> Rows(PartStore store) =>
        store.Catalogue.Kept(Kind).Select(kept => kept.Part).Select(part =>
        {
            var spec = TextsOf(part);
            return (IEnumerable<string>)[part.Number, part.Maker, part.Title, TextOf(part.Status), .. family.SpecShape.Fields.Select(field => spec.GetValueOrDefault(field.Name, string.Empty))];
        });

    public override bool IsWhole(CsvRow row) => PartNumber.Complaint(row[Number].Trim()) is null && (!row.Has(Status) || TryRead(row[Status], out _));

    public override IEnumerable<Judged> Judge(IEnumerable<SurveyedRow> rows, Beside beside, int longestCell)
    {
        var cells = new SpecCells(family, longestCell);
        return rows.Select(row => new PartRow(family, row, beside.Catalogue, cells).Judge());
    }

    /// <summary>The spec's cells that are written on, as they stand.</summary>
    public static IReadOnlyList<NamedText> SpecOf(CsvRow row) =>
        [.. row.Columns.Keys.Where(column => !Head.Contains(column, StringComparer.OrdinalIgnoreCase)).Select(column => new NamedText(column, row[column])).Where(cell => cell.Text.Length > 0)];

    public static string TextOf(PartStatus status) => status.ToString().ToLowerInvariant();

    public static bool TryRead(string text, out PartStatus status)
    {
        status = Enum.GetValues<PartStatus>().FirstOrDefault(one => TextOf(one).Equals(text.Trim(), StringComparison.OrdinalIgnoreCase));
        return TextOf(status).Equals(text.Trim(), StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>A stored spec by its fields' names, whatever their letters' case.</summary>
    public static IReadOnlyDictionary<string, string> TextsOf(StoredPart part)
    {
        var texts = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var (name, text) in part.Spec) texts.TryAdd(name, text);
        return texts;
    }
}
