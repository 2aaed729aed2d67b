using System.Globalization;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Counter.Lists;

namespace PartsMatch.Service.Exchange.Lists;

/// <summary>One row of a list: what is carried through of it, and the old part that it names.</summary>
/// <param name="Number">Its number in the file as spreadsheets count, the header being 1.</param>
/// <param name="Carried">Its cells, as many as the header has.</param>
/// <param name="Old">The old part; null where there is none to ask about.</param>
/// <param name="Wrong">Why there is none; empty for a blank row.</param>
internal sealed record ListRow(int Number, IReadOnlyList<string> Carried, OldPart? Old, string Wrong)
{
    /// <summary>A blank row, which keeps its place.</summary>
    public static ListRow Blank(int number, int columns) => new(number, [.. Enumerable.Repeat(string.Empty, columns)], Old: null, string.Empty);

    /// <param name="row">The row as it stands in the file.</param>
    /// <param name="siteFields">Of each column the field of the site that it is of; null for another.</param>
    public static ListRow Of(CsvRow row, IReadOnlyList<string?> siteFields)
    {
        var carried = Carry(row.Cells, siteFields.Count);
        if (row.Wrong is { } malformed) return new(row.Number, carried, Old: null, malformed.Message);
        var kind = row[ListColumns.Kind].Trim();
        var family = kind.Length > 0 ? Families.Find(kind) : null;
        if (kind.Length > 0 && family is null) return new(row.Number, carried, Old: null, $"There is no kind “{kind}”. The kinds are: {string.Join(", ", Families.All.Select(one => one.Kind))}.");
        List<NamedText> site = [];
        for (var at = 0; at < carried.Count; at++)
        {
            if (siteFields[at] is { } field && carried[at].Trim() is { Length: > 0 } text) site.Add(new(field, text));
        }

        return new(row.Number, carried, new(family, row[ListColumns.Number].Trim(), row[ListColumns.Text].Trim(), site), string.Empty);
    }

    /// <summary>The cells that an answer puts behind a row.</summary>
    public static string[] Answered(Replaced replaced, int first) =>
    [
        .. replaced.Parts.SelectMany(one => CellsOf(one.Part, one.Ranked)),
        .. Enumerable.Repeat(string.Empty, (first - replaced.Parts.Count) * ListColumns.CellsOfAPart),
        string.Join("; ", replaced.Old?.Stored.SupersededBy.Select(by => string.Create(CultureInfo.InvariantCulture, $"{by.Number} on {by.On:O} ({by.SaidBy})")) ?? []),
        replaced.Why,
    ];

    private static string[] CellsOf(CatalogueEntry part, RankedPart ranked) =>
    [
        part.Stored.Number,
        part.Stored.Maker,
        part.Stored.Title,
        Words.Of(ranked.Unread),
        string.Join("; ", Replaced.ToDo(ranked.Unread)),
        ranked.Likelihood.Percent.ToString(CultureInfo.InvariantCulture),
        Words.From(ranked.Likelihood),
        part.Stock?.OnHand?.ToString(CultureInfo.InvariantCulture) ?? string.Empty,
        part.Stock is { Price: { } price } stock ? Words.Price(price, stock.Currency) : string.Empty,
    ];

    /// <summary>A row of too many cells keeps them all: what was most likely one cell with a comma in it stands in the last.</summary>
    private static IReadOnlyList<string> Carry(IReadOnlyList<string> cells, int columns) =>
        cells.Count == columns ? cells
        : cells.Count > columns ? [.. cells.Take(columns - 1), string.Join(',', cells.Skip(columns - 1))]
        : [.. cells, .. Enumerable.Repeat(string.Empty, columns - cells.Count)];
}
