using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace PartsMatch.Service.Exchange;

/// <summary>A row of a table, by the names of its columns.</summary>
/// <param name="Line">Its line in the file, the header being 1.</param>
/// <param name="Columns">Every column with its text; empty where nothing is written.</param>
internal sealed record CsvRow(int Line, IReadOnlyDictionary<string, string> Columns)
{
    public string this[string column] => Columns.GetValueOrDefault(column, string.Empty);

    /// <exception cref="CsvHelperException">The text is no table.</exception>
    public static IEnumerable<CsvRow> ReadAll(TextReader text)
    {
        using var csv = new CsvReader(text, new CsvConfiguration(CultureInfo.InvariantCulture) { Mode = CsvMode.RFC4180, DetectColumnCountChanges = true });
        if (!csv.Read() || !csv.ReadHeader()) yield break;
        var header = csv.HeaderRecord!;
        while (csv.Read())
        {
            yield return new(csv.Parser.RawRow, header.Select((name, at) => (name, value: csv.GetField(at) ?? string.Empty)).ToDictionary(pair => pair.name, pair => pair.value, StringComparer.OrdinalIgnoreCase));
        }
    }
}
