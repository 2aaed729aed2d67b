using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Exchange;

namespace PartsMatch.Service.Tests.Exchange;

/// <summary>A quotation mark that is not closed spoils its own row and no other.</summary>
public sealed class UnclosedQuoteTests
{
    private const string Head = "number,maker,title,status\n";

    [Fact]
    public async Task The_row_and_the_cell_where_it_opens_are_named_and_the_rows_behind_it_are_taken()
    {
        using var catalogue = new Importing();
        var report = await catalogue.TakeAsync("motor", Head + "A-1,Quennor,one,current\nA-2,Quennor,\"5 in fan,current\nA-3,Quennor,three,current\nA-4,Quennor,\"four, in white\",current\n");
        (report.Rows, report.New, report.Bad).ShouldBe((4, 3, 1));
        var bad = report.Told.Single(row => row.State == RowState.Bad);
        (bad.Row, bad.Number, bad.Wrong.ShouldHaveSingleItem().Column, bad.Wrong[0].Code).ShouldBe((3, "A-2", "title", Codes.RowMalformed));
        bad.Wrong[0].Message.ShouldBe("A quotation mark opens this cell and is not closed before the line ends, so the next line was read as a row of its own. Put the whole cell in quotation marks, and double those inside it: \"motor 5\"\" deep\".");
        catalogue.Store.Find("A-3")!.Title.ShouldBe("three");
        catalogue.Store.Find("A-4")!.Title.ShouldBe("four, in white");
    }

    [Fact]
    public async Task A_mark_that_another_rows_mark_seems_to_close_swallows_none_of_the_rows_between()
    {
        using var catalogue = new Importing();
        var report = await catalogue.PreviewAsync("motor", Head + "A-1,Quennor,\"5 in fan,current\nA-2,Quennor,two,current\nA-3,Quennor,fan of 5\",current\nA-4,Quennor,four,current\n");
        report.Told.Select(row => (row.Row, row.State)).ShouldBe([(2, RowState.Bad), (3, RowState.New), (4, RowState.Bad), (5, RowState.New)]);
        report.Told[2].Wrong.ShouldHaveSingleItem().Message.ShouldStartWith("A quotation mark stands inside this cell");
    }

    [Fact]
    public async Task Every_row_of_a_file_with_a_mark_open_in_each_is_told()
    {
        using var catalogue = new Importing();
        var report = await catalogue.PreviewAsync("stock", "number,price,currency,onHand\n" + string.Concat(Enumerable.Repeat("QN-100,\"1,USD,1\n", 300)));
        (report.Rows, report.Bad).ShouldBe((300, 300));
        report.Told.Select(row => row.Row).ShouldBe(Enumerable.Range(2, 300));
    }

    [Fact]
    public async Task In_the_header_it_is_told_as_the_headers()
    {
        using var catalogue = new Importing();
        (await catalogue.TryAsync("motor", "number,\"maker,title\nA-1,M,t\n"u8.ToArray())).Refusals[0].Message.ShouldStartWith("A quotation mark in the first row is not closed");
    }

    [Fact]
    public void A_cell_of_several_lines_is_still_one_cell()
    {
        var rows = new CsvReader("number,price,currency,onHand\nA-1,\"a\nb,c\n,,\n\",USD,1\nA-2,1,USD,1\n"u8.ToArray(), Importing.Table("stock").IsWhole).Rows().ToList();
        rows.Select(row => row["price"]).ShouldBe(["a\nb,c\n,,\n", "1"]);
    }

    [Property(MaxTest = 300)]
    public Property Of_a_table_with_a_mark_set_somewhere_every_other_row_reads_as_before() => Prop.ForAll(Damaged().ToArbitrary(), damaged =>
    {
        var (rows, which, cell, quoted) = damaged;
        var lines = rows.Select(row => string.Join(',', row.Select(text => quoted ? $"\"{text}\"" : text))).ToList();
        var whole = Read(lines);
        lines[which] = string.Join(',', rows[which].Select((text, at) => at == cell ? $"\"{text}" : text));
        var read = Read(lines);
        read.Select(row => row.Number).ShouldBe(whole.Select(row => row.Number));
        read[which].Wrong.ShouldNotBeNull().Code.ShouldBe(Codes.RowMalformed);
        for (var at = 0; at < rows.Count; at++)
        {
            if (at != which) (read[at].Wrong, string.Join('|', read[at].Cells)).ShouldBe((null, string.Join('|', rows[at])));
        }
    });

    private static List<CsvRow> Read(IEnumerable<string> lines) =>
        [.. new CsvReader(System.Text.Encoding.UTF8.GetBytes("number,price,currency,onHand\n" + string.Join('\n', lines)), Importing.Table("stock").IsWhole).Rows()];

    private static Gen<(IReadOnlyList<string[]> Rows, int Which, int Cell, bool IsQuoted)> Damaged() =>
        from prices in Gen.Choose(1, 99).NonEmptyListOf()
        from which in Gen.Choose(0, prices.Count - 1)
        from cell in Gen.Choose(0, 3)
        from quoted in Gen.Elements(true, false)
        select ((IReadOnlyList<string[]>)[.. prices.Select((price, at) => (string[])[FormattableString.Invariant($"A-{at}"), FormattableString.Invariant($"{price}"), "USD", "1"])], which, cell, quoted);
}
