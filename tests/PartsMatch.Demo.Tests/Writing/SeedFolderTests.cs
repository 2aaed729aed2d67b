using System.Globalization;
using PartsMatch.Demo.Writing;
using PartsMatch.Fit;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Demo.Tests.Writing;

public sealed class SeedFolderTests
{
    [Theory]
    [InlineData("en-US")]
    [InlineData("de-DE")]
    public void Making_it_again_gives_the_committed_bytes_under_any_culture(string culture)
    {
        var before = CultureInfo.CurrentCulture;
        var folder = Directory.CreateTempSubdirectory("seed-data-");
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            SeedFolder.Write(DemoCatalogue.Make(), folder.FullName);

            Names(folder.FullName).ShouldBe(Names(SeedData.Folder));
            foreach (var name in Names(folder.FullName))
            {
                File.ReadAllBytes(Path.Combine(folder.FullName, name)).SequenceEqual(File.ReadAllBytes(Path.Combine(SeedData.Folder, name))).ShouldBeTrue($"{name} differs from what is committed.");
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void Files_are_utf_8_without_a_mark_and_end_their_lines_with_line_feeds()
    {
        foreach (var path in Directory.GetFiles(SeedData.Folder))
        {
            var bytes = File.ReadAllBytes(path);
            bytes.ShouldNotContain((byte)'\r', path);
            bytes[..3].ShouldNotBe(new byte[] { 0xEF, 0xBB, 0xBF }, path);
            bytes[^1].ShouldBe((byte)'\n', path);
        }
    }

    [Fact]
    public void Every_family_has_its_file_with_a_column_for_each_field_in_order()
    {
        foreach (var family in Families.All)
        {
            var rows = SeedData.Table($"{family.Kind}s.csv");
            rows[0].Cells.Keys.ShouldBe(["number", "maker", "title", "status", .. family.SpecShape.Fields.Select(field => field.Name)]);
        }
    }

    [Fact]
    public void Every_row_reads_without_complaint_and_is_written_as_its_forms_write_it()
    {
        foreach (var family in Families.All)
        {
            foreach (var row in SeedData.Table($"{family.Kind}s.csv"))
            {
                var (spec, complaints) = family.ReadSpec(SeedData.Texts(row));
                complaints.ShouldBeEmpty(row.Number);
                foreach (var field in family.SpecShape.Fields) (field.TextOf(spec, Units.AsGiven) ?? string.Empty).ShouldBe(row[field.Name], row.Number);
            }
        }
    }

    [Fact]
    public void Part_numbers_differ_even_without_case_dashes_and_spaces()
    {
        var plain = Families.All.SelectMany(family => SeedData.Table($"{family.Kind}s.csv"))
            .Select(row => string.Concat(row.Number.Where(sign => sign is not ('-' or ' '))).ToUpperInvariant()).ToList();

        plain.Count.ShouldBe(SeedData.ByKind.Sum(rows => rows.Count()));
        plain.Distinct().Count().ShouldBe(plain.Count);
    }

    private static List<string> Names(string folder) => [.. Directory.GetFiles(folder).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];
}
