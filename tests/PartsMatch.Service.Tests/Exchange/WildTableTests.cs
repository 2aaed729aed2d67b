using System.Text;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Exchange;

namespace PartsMatch.Service.Tests.Exchange;

/// <summary>What is no table, but millions of commas, marks or lines, takes little more than its own bytes, and its answer little of them.</summary>
public sealed class WildTableTests
{
    private const int Many = 3_000_000;
    private const string Head = "number,maker,title,status\n";

    [Fact]
    public void Of_a_row_of_commas_a_thousand_cells_are_told_apart_and_the_rest_is_one_more()
    {
        var row = new CsvReader(Encoding.UTF8.GetBytes($"{Head}A-1{new string(',', Many)}z\nA-2,M,t,current\n"), _ => true).Rows().ToList();

        row.Select(one => one.Number).ShouldBe([2, 3]);
        row[0].Places.Length.ShouldBe(CsvScan.MostCells + 1);
        row[0].Cells[0].ShouldBe("A-1");
        row[0].Cells[^1].ShouldBe(new string(',', Many - CsvScan.MostCells) + "z");
        row[0].Wrong!.Message.ShouldStartWith("The row has more than 1000 cells, and the header names 4 columns.");
        row[1].Wrong.ShouldBeNull();
    }

    [Fact]
    public void A_row_of_as_many_cells_as_are_told_apart_is_whole()
    {
        var names = string.Join(',', Enumerable.Range(0, CsvScan.MostCells).Select(at => $"c{at}"));
        var row = new CsvReader(Encoding.UTF8.GetBytes($"{names}\n{names}\n"), _ => true).Rows().ShouldHaveSingleItem();

        row.Wrong.ShouldBeNull();
        row["c999"].ShouldBe("c999");
    }

    [Fact]
    public void Blank_lines_are_counted_and_nothing_is_made_of_them()
    {
        var file = Encoding.UTF8.GetBytes($"{Head}{new string('\n', Many)}A-2,M,t,current\n");
        var before = GC.GetAllocatedBytesForCurrentThread();
        var row = new CsvReader(file, _ => true).Rows().ShouldHaveSingleItem();

        row.Number.ShouldBe(Many + 2);
        (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBeLessThan(Many);
    }

    [Fact]
    public async Task A_header_of_commas_is_refused_in_a_sentence()
    {
        using var catalogue = new Importing();
        var refusal = (await catalogue.TryAsync("motor", Encoding.UTF8.GetBytes("number" + new string(',', Many)))).Refusals.ShouldHaveSingleItem();

        (refusal.Code, refusal.Message).ShouldBe((Codes.NotATable, "The first row names more than 1000 columns, and no table has as many. Is it a row of the table's names?"));
    }

    [Fact]
    public async Task Of_columns_that_nobody_knows_the_first_fifty_are_told_one_by_one()
    {
        using var catalogue = new Importing();
        var refusals = (await catalogue.TryAsync("motor", Encoding.UTF8.GetBytes("number," + string.Join(',', Enumerable.Range(0, 900).Select(at => $"c{at}"))))).Refusals;

        refusals.Count.ShouldBe(51);
        refusals[^1].Message.ShouldBe("850 further columns are not known either.");
    }

    [Theory]
    [InlineData('x')]
    [InlineData('"')]
    public async Task A_cell_that_is_the_rest_of_the_file_is_not_answered_whole(char sign)
    {
        using var catalogue = new Importing();
        var report = await catalogue.PreviewAsync("motor", Head + new string(sign, Many));

        report.Bad.ShouldBe(1);
        var told = report.Told.ShouldHaveSingleItem();
        told.Number.Length.ShouldBeLessThan(300);
        told.Wrong.ShouldAllBe(one => one.Message.Length < 1000);
    }
}
