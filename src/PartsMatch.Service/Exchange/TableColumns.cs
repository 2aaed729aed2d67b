using PartsMatch.Service.Counter;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Exchange;

/// <summary>Does a file's header name the columns of a table? All that is wrong is told at once; a column that is not known is never left aside.</summary>
internal static class TableColumns
{
    /// <summary>Of columns that nobody knows so many are told one by one.</summary>
    private const int MostTold = 50;

    /// <returns>The columns that are not there and need not be, and what is wrong.</returns>
    public static (IReadOnlyList<string> Missing, IReadOnlyList<Refusal> Wrong) Check(IReadOnlyList<string> header, CatalogueTable table)
    {
        if (header.All(string.IsNullOrEmpty)) return ([], [new(Codes.Empty, string.Empty, $"The file is empty. Its first row names the columns: {string.Join(", ", table.Columns)}.")]);
        if (WrongSeparator(header) is { } separator) return ([], [separator]);
        if (TooMany(header) is { } many) return ([], [many]);

        var missing = table.Columns.Where(column => !Has(header, column)).ToList();
        var unknown = header.Index().Where(pair => !Has(table.Columns, pair.Item)).ToList();
        var others = CatalogueTable.All.FirstOrDefault(other => other != table && header.All(name => Has(other.Columns, name)));
        List<Refusal> wrong =
        [
            .. Nameless(header),
            .. unknown.Where(pair => pair.Item.Length > 0).Take(MostTold).Select(pair => new Refusal(Codes.UnknownField, pair.Item, Unknown(pair.Item, table, others))),
            .. Further(unknown.Count(pair => pair.Item.Length > 0)),
            .. Twice(header),
            .. missing.Where(column => Has(table.Needed, column)).Select(column => new Refusal(Codes.ColumnMissing, column, $"There is no column “{column}”, and without it no row can be read.")),
        ];
        return (missing, wrong);
    }

    /// <summary>Columns that have no name, whose cells nobody could tell apart.</summary>
    public static IEnumerable<Refusal> Nameless(IReadOnlyList<string> header) =>
        header.Index().Where(pair => pair.Item.Length == 0).Select(pair => new Refusal(Codes.Empty, string.Empty, FormattableString.Invariant($"Column {pair.Index + 1} has no name. Name it, or take it out.")));

    /// <summary>What is wrong with a header of more names than any table has.</summary>
    public static Refusal? TooMany(IReadOnlyList<string> header) => header.Count <= CsvScan.MostCells ? null
        : new(Codes.NotATable, string.Empty, FormattableString.Invariant($"The first row names more than {CsvScan.MostCells} columns, and no table has as many. Is it a row of the table's names?"));

    private static IEnumerable<Refusal> Further(int unknown)
    {
        if (unknown > MostTold) yield return new(Codes.UnknownField, string.Empty, FormattableString.Invariant($"{unknown - MostTold} further columns are not known either."));
    }

    /// <summary>Names that several columns have.</summary>
    public static IEnumerable<Refusal> Twice(IReadOnlyList<string> header) =>
        header.GroupBy(name => name, StringComparer.OrdinalIgnoreCase).Where(same => same.Key.Length > 0 && same.Count() > 1).Select(same => new Refusal(Codes.GivenTwice, same.Key, $"There are {same.Count()} columns “{same.Key}”. Leave one of them."));

    private static string Unknown(string name, CatalogueTable table, CatalogueTable? others)
    {
        if (others is not null) return $"There is no column “{name}” in the table {table.Kind}. The file looks like the table {others.Kind}.";
        var near = Spelling.Nearest(name, table.Columns);
        return near.Count > 0 ? $"There is no column “{name}”. Did you mean {string.Join(" or ", near)}?" : $"There is no column “{name}”. The columns are: {string.Join(", ", table.Columns)}.";
    }

    /// <summary>What is wrong with a header of which nothing is parted by commas.</summary>
    public static Refusal? WrongSeparator(IReadOnlyList<string> header) => Separator(header) is { } separator
        ? new(Codes.NotATable, string.Empty, $"The cells are parted by {separator}, as spreadsheets set to some languages write them. Save the file with commas between the cells, and with points in numbers.")
        : null;

    /// <summary>Where the whole header is one cell, what stands between its names.</summary>
    private static string? Separator(IReadOnlyList<string> header) => header switch
    {
        [var one] when one.Contains(';', StringComparison.Ordinal) => "semicolons",
        [var one] when one.Contains('\t', StringComparison.Ordinal) => "tabs",
        _ => null,
    };

    private static bool Has(IEnumerable<string> names, string name) => names.Contains(name, StringComparer.OrdinalIgnoreCase);
}
