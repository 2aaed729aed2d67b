using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Tests;

/// <summary>The demo catalogue's parts, as the files give them.</summary>
internal static class DemoParts
{
    /// <summary>All parts of a family: number and spec.</summary>
    public static IEnumerable<(string Number, IReadOnlyList<NamedText> Texts)> Of(Family family)
    {
        using var csv = new CsvReader(new StreamReader(Path.Combine(Repository.Root, "seed-data", $"{family.Kind}s.csv")), new CsvConfiguration(CultureInfo.InvariantCulture));
        csv.Read();
        csv.ReadHeader();
        while (csv.Read())
        {
            yield return (csv.GetField("number")!, [.. family.SpecShape.Fields.Select(field => new NamedText(field.Name, csv.GetField(field.Name) ?? string.Empty))]);
        }
    }
}
