using System.Globalization;
using System.Text;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Published;

/// <summary>One row of an embedded table, by the names in its first line.</summary>
/// <param name="cells">The cells by column name.</param>
internal sealed class PublishedRow(IReadOnlyDictionary<string, string> cells)
{
    /// <summary>Where the row comes from, and how far it was confirmed.</summary>
    public Source Source => new(cells["source"], Enum.Parse<SourceStatus>(cells["status"], ignoreCase: true));

    /// <summary>The text of a cell; empty when the table leaves it out.</summary>
    public string Text(string column) => cells[column];

    /// <summary>The number in a cell; null when the table leaves it out.</summary>
    public double? Number(string column) => cells[column].Length == 0 ? null : double.Parse(cells[column], NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>The number in a cell that every row has.</summary>
    public double Needed(string column) => Number(column) ?? throw new InvalidOperationException($"The column {column} has a gap.");
}

/// <summary>Reads the CSV tables that are embedded beside this file: UTF-8, a header line, quotes round cells with commas.</summary>
internal static class PublishedTable
{
    /// <summary>All rows of a table.</summary>
    /// <param name="name">The file's name without folder and ending.</param>
    public static IReadOnlyList<PublishedRow> Read(string name)
    {
        using var stream = typeof(PublishedTable).Assembly.GetManifestResourceStream($"PartsMatch.Fit.Published.{name}.csv")
            ?? throw new InvalidOperationException($"The table {name} is not embedded.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        var header = Cells(reader.ReadLine()!);
        var rows = new List<PublishedRow>();
        while (reader.ReadLine() is { } line)
        {
            var cells = Cells(line);
            if (cells.Count != header.Count) throw new InvalidOperationException($"A row of {name} has {cells.Count} cells, not {header.Count}: {line}");
            rows.Add(new(header.Zip(cells).ToDictionary(pair => pair.First, pair => pair.Second)));
        }

        return rows;
    }

    private static List<string> Cells(string line)
    {
        var cells = new List<string>();
        var cell = new StringBuilder();
        var quoted = false;
        foreach (var letter in line)
        {
            if (letter == '"')
            {
                quoted = !quoted;
            }
            else if (letter == ',' && !quoted)
            {
                cells.Add(cell.ToString());
                cell.Clear();
            }
            else
            {
                cell.Append(letter);
            }
        }

        cells.Add(cell.ToString());
        return cells;
    }
}
