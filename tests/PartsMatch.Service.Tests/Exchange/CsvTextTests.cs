using System.Text;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Service.Exchange;

namespace PartsMatch.Service.Tests.Exchange;

public sealed class CsvTextTests
{
    [Property(MaxTest = 2000)]
    public Property Any_texts_that_are_written_are_read_again() => Prop.ForAll(Awkward.Text(), Awkward.Text(), (one, other) =>
    {
        var table = Write(["a", "b", "c"], [one, "in between", other]);
        var row = Read(table).ShouldHaveSingleItem();
        row.Wrong.ShouldBeNull();
        row.Cells.ShouldBe([one, "in between", other]);
    });

    [Fact]
    public void A_table_is_written_with_commas_and_line_feeds_and_quotation_marks_only_where_they_are_needed() =>
        Write(["a", "b"], ["1/4 hp", "x, y"], ["", "a \"b\""], ["-20 °C", " blank"]).ShouldBe("a,b\n1/4 hp,\"x, y\"\n,\"a \"\"b\"\"\"\n'-20 °C,\" blank\"\n");

    [Fact]
    public void Rows_are_counted_as_a_spreadsheet_counts_them()
    {
        var rows = Read("a,b\n1,2\n\n,\n\"3\n3\",4\n5,6");
        rows.Select(row => row.Number).ShouldBe([2, 5, 6]);
        rows.Select(row => row["A"]).ShouldBe(["1", "3\n3", "5"]);
    }

    [Theory]
    [InlineData("1,2,3", "", "The row has 3 cells, and the header names 2 columns.")]
    [InlineData("1", "", "The row has 1 cells, and the header names 2 columns.")]
    [InlineData("1,\"2", "b", "A quotation mark opens this cell and is not closed before the line ends")]
    [InlineData("\"1,2", "a", "A quotation mark opens this cell and is not closed before the line ends")]
    [InlineData("1,\"2\" 3", "b", "A quotation mark stands inside this cell, where none can.")]
    [InlineData("1,2\"3", "b", "A quotation mark stands inside this cell, where none can.")]
    public void A_row_whose_cells_cannot_be_told_apart_is_wrong(string row, string column, string sentence)
    {
        var wrong = Read($"a,b\n{row}\n").ShouldHaveSingleItem().Wrong.ShouldNotBeNull();
        wrong.Column.ShouldBe(column);
        wrong.Message.ShouldStartWith(sentence);
    }

    private static List<CsvRow> Read(string table) => [.. new CsvReader(Encoding.UTF8.GetBytes(table), isWhole: _ => false).Rows()];

    private static string Write(params string[][] rows)
    {
        using var text = new StringWriter { NewLine = "\n" };
        CsvText.WriteAsync(text, rows, TestContext.Current.CancellationToken).GetAwaiter().GetResult();
        return text.ToString();
    }
}
