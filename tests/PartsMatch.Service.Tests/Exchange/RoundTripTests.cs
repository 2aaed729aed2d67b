using FsCheck.Fluent;
using PartsMatch.Service.Exchange;
using PartsMatch.Service.Tests.Support;
using PartsMatch.Store;

namespace PartsMatch.Service.Tests.Exchange;

/// <summary>Importing an export changes nothing, and exporting again gives the same bytes.</summary>
public sealed class RoundTripTests
{
    [Fact]
    public async Task The_whole_demo_catalogue_goes_out_and_comes_in_unchanged()
    {
        using var catalogue = new Importing(SeedCatalogue.Read(folder: null));
        var revision = catalogue.Store.Revision;
        foreach (var table in CatalogueTable.All)
        {
            var export = await catalogue.ExportAsync(table.Kind);
            var report = await catalogue.TakeAsync(table.Kind, export);
            report.Rows.ShouldBeGreaterThan(100, table.Kind);
            report.Same.ShouldBe(report.Rows, table.Kind);
            report.Notes.ShouldBeEmpty();
            (await catalogue.ExportAsync(table.Kind)).ShouldBe(export);
        }

        catalogue.Store.Revision.ShouldBe(revision);
    }

    [Fact]
    public async Task A_store_that_begins_with_an_export_exports_the_same_and_one_that_takes_it_says_the_same()
    {
        using var catalogue = new Importing();
        using var folder = new TestFolder();
        foreach (var table in CatalogueTable.All) folder.Write(table.FileName, await catalogue.ExportAsync(table.Kind));
        using var begun = new Importing(SeedCatalogue.Read(folder.Path));
        using var taken = new Importing(new SeedData("nothing", [], []));
        foreach (var table in CatalogueTable.All)
        {
            var export = await catalogue.ExportAsync(table.Kind);
            (await begun.ExportAsync(table.Kind)).ShouldBe(export);
            (await taken.TakeAsync(table.Kind, export)).Bad.ShouldBe(0);
            // Spelt as the house spells it: 1 is single-phase.
            var back = await catalogue.PreviewAsync(table.Kind, await taken.ExportAsync(table.Kind));
            back.Same.ShouldBe(export.Count(letter => letter == '\n') - 1);
            back.Rows.ShouldBe(back.Same);
        }
    }

    [Fact]
    public async Task Whatever_a_part_says_its_export_says_the_same()
    {
        var texts = Awkward.Text().Generator.Sample(400).ToList();
        var parts = texts.Select((text, at) => new PartDraft($"P-{at}", "motor", text, $"{text} and {text}", PartStatus.Current, [new("power", text)], [new($"{text}X", text, new(2024, 2, 29))])).ToList();
        using var catalogue = new Importing(new SeedData("awkward texts", parts, []));
        foreach (var kind in (string[])["motor", "supersessions"])
        {
            var export = await catalogue.ExportAsync(kind);
            var report = await catalogue.PreviewAsync(kind, export);
            report.Same.ShouldBe(400, string.Join('\n', report.Told));
        }
    }

    [Fact]
    public async Task Cells_that_could_be_formulas_are_guarded_in_the_file_and_not_in_the_catalogue()
    {
        using var catalogue = new Importing();
        const string Table = "number,maker,title,status,ambientLeast\nN-1,=HYPERLINK(1),'quoted',current,'-20 °C\n";
        (await catalogue.TakeAsync("motor", Table)).New.ShouldBe(1);
        var part = catalogue.Store.Find("N-1")!;
        (part.Maker, part.Title, part.Spec.Single().Text).ShouldBe(("=HYPERLINK(1)", "'quoted'", "-20 °C"));
        var row = (await catalogue.ExportAsync("motor")).Split('\n').Single(line => line.StartsWith("N-1,", StringComparison.Ordinal));
        row.ShouldStartWith("N-1,'=HYPERLINK(1),'quoted',current,");
        row.ShouldContain(",'-20 °C,");
    }
}
