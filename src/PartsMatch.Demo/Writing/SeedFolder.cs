using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Demo.Writing;

/// <summary>Writes the catalogue as files: UTF-8 without a mark, line feeds, one culture, parts in the order of their numbers.</summary>
public static class SeedFolder
{
    private static readonly CsvConfiguration Csv = new(CultureInfo.InvariantCulture) { NewLine = "\n" };
    private static readonly UTF8Encoding Plain = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>Writes every file into a folder, which is made when it is not there.</summary>
    public static void Write(DemoCatalogue catalogue, string folder)
    {
        Directory.CreateDirectory(folder);
        foreach (var family in catalogue.Families) WriteTable(Path.Combine(folder, FileOf(family.Family)), Heads(family.Family), InOrder(family.Parts).Select(part => Row(family.Family, part)));
        WriteTable(
            Path.Combine(folder, "supersessions.csv"),
            ["number", "supersededBy", "saidBy", "on"],
            catalogue.Supersessions.Select(each => new[] { each.Number, each.SupersededBy, each.SaidBy, each.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) }));
        WriteTable(
            Path.Combine(folder, "stock.csv"),
            ["number", "price", "currency", "onHand"],
            InOrder(catalogue.Parts).Select(part => new[] { part.Number, part.Price.ToString("0.00", CultureInfo.InvariantCulture), "USD", part.OnHand.ToString(CultureInfo.InvariantCulture) }));
        OutcomeFile.Write(catalogue, Path.Combine(folder, "outcomes.csv"));
        File.WriteAllText(Path.Combine(folder, "README.md"), SeedReadme.Of(catalogue), Plain);
    }

    /// <summary>A family's file is named after its kind: motors.csv.</summary>
    public static string FileOf(FamilyCatalogue family) => $"{family.Kind}s.csv";

    private static IEnumerable<DemoPart> InOrder(IEnumerable<DemoPart> parts) => parts.OrderBy(part => part.Number, StringComparer.Ordinal);

    private static string[] Heads(FamilyCatalogue family) => ["number", "maker", "title", "status", .. family.Shape.Fields.Select(field => field.Name)];

    private static string[] Row(FamilyCatalogue family, DemoPart part) =>
    [
        part.Number, part.Maker.Name, part.Title, part.IsDiscontinued ? "discontinued" : "current",
        .. family.Shape.Fields.Select(field => field.TextOf(part.Spec, Units.AsGiven) ?? string.Empty),
    ];

    internal static void WriteTable(string path, IEnumerable<string> heads, IEnumerable<IEnumerable<string>> rows)
    {
        using var text = new StreamWriter(path, append: false, Plain);
        using var table = new CsvWriter(text, Csv);
        foreach (var row in rows.Prepend(heads))
        {
            foreach (var field in row) table.WriteField(field);
            table.NextRecord();
        }
    }
}
