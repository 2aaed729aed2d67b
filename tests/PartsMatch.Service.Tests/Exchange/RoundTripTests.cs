using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
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
            if (table is not OutcomeTable) report.Rows.ShouldBeGreaterThanOrEqualTo(100, table.Kind);
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

    [Property(MaxTest = 25)]
    public Property Whatever_parts_say_importing_their_export_changes_nothing_and_exporting_again_gives_the_same_bytes() => Prop.ForAll(Parts().NonEmptyListOf().ToArbitrary(), async parts =>
    {
        var numbered = parts.Select((part, at) => part with { Number = FormattableString.Invariant($"P-{at:0000}{part.Number}") }).ToList();
        var stock = numbered.Select((part, at) => new StockLine(part.Number, at % 3 == 0 ? null : at + 0.50m, at % 3 == 0 ? string.Empty : "USD", at % 2 == 0 ? null : at)).ToList();
        using var catalogue = new Importing(new SeedData("awkward parts", numbered, stock));
        var revision = catalogue.Store.Revision;
        foreach (var kind in (string[])["motor", "supersessions", "stock"])
        {
            var export = await catalogue.ExportAsync(kind);
            var report = await catalogue.TakeAsync(kind, export);
            (report.Same, report.New + report.Changed).ShouldBe((report.Rows, 0), string.Join('\n', report.Told));
            report.Rows.ShouldBe(kind == "supersessions" ? numbered.Sum(part => part.SupersededBy.Count) : numbered.Count);
            (await catalogue.ExportAsync(kind)).ShouldBe(export);
        }

        catalogue.Store.Revision.ShouldBe(revision);
    });

    [Theory]
    [InlineData("=1+1")]
    [InlineData("+1")]
    [InlineData("-1")]
    [InlineData("@sum")]
    [InlineData("\tx")]
    [InlineData("a \"b\", c")]
    [InlineData("one\ntwo\r\nthree")]
    [InlineData("µF 電動機 \U0001F527")]
    public async Task A_title_that_tables_are_prone_to_spoil_goes_out_and_in_unchanged(string title)
    {
        using var catalogue = new Importing(new SeedData("one part", [new("P-1", "motor", "Quennor", title, PartStatus.Current, [], [])], []));
        var export = await catalogue.ExportAsync("motor");
        (await catalogue.TakeAsync("motor", export)).Same.ShouldBe(1);
        (await catalogue.ExportAsync("motor")).ShouldBe(export);
        using var other = new Importing(new SeedData("nothing", [], []));
        // Into another catalogue goes what may be kept anew: a text of one line.
        var taken = await other.TakeAsync("motor", export);
        if (title.AsSpan().Trim().ContainsAny("\r\n")) taken.Bad.ShouldBe(1);
        else other.Store.Find("P-1")!.Title.ShouldBe(title.Trim());
    }

    /// <summary>A part of any words; its number is told apart by what stands before it.</summary>
    private static Gen<PartDraft> Parts()
    {
        var words = Awkward.Text().Generator;
        return from tail in words
               from maker in words
               from title in words
               from status in Gen.Elements(Enum.GetValues<PartStatus>())
               from power in Gen.OneOf(words, Gen.Elements("1/4 hp", "0.25 HP", "186.5 W"))
               from replaced in Gen.Choose(0, 2).SelectMany(count => words.ArrayOf(count))
               select new PartDraft(tail.Length > 80 ? string.Empty : tail, "motor", maker, title, status, [new("power", power)], [.. replaced.Select(text => new Supersession($"X{text}", text, new(2024, 2, 29)))]);
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
