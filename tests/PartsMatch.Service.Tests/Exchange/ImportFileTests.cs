using System.Text;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Exchange;

namespace PartsMatch.Service.Tests.Exchange;

/// <summary>What is wrong with a file as a whole.</summary>
public sealed class ImportFileTests
{
    [Theory]
    [InlineData("", Codes.Empty, "The file is empty. Its first row names the columns: number, maker, title, status, rating,")]
    [InlineData("  \n \n", Codes.Empty, "The file is empty.")]
    [InlineData("number;maker;title;status\nA-1;M;t;current\n", Codes.NotATable, "The cells are parted by semicolons, as spreadsheets set to some languages write them. Save the file with commas")]
    [InlineData("number\tmaker\nA-1\tM\n", Codes.NotATable, "The cells are parted by tabs")]
    [InlineData("number,maker,title,status,ratign\n", Codes.UnknownField, "There is no column “ratign”. Did you mean rating?")]
    [InlineData("number,price,currency,onHand\n", Codes.UnknownField, "There is no column “price” in the table capacitor. The file looks like the table stock.")]
    [InlineData("maker,title,status\n", Codes.ColumnMissing, "There is no column “number”, and without it no row can be read.")]
    [InlineData("number,maker,Number\n", Codes.GivenTwice, "There are 2 columns “number”. Leave one of them.")]
    [InlineData("number,maker,,title\n", Codes.Empty, "Column 3 has no name.")]
    [InlineData("PK\u0003\u0004 and so on", Codes.NotATable, "This is a spreadsheet's own file, not a table as text. Save it as CSV in UTF-8.")]
    public async Task A_file_that_is_no_table_of_ours_is_told_with_what_would_be_right(string text, string code, string sentence) => await Refused(Encoding.UTF8.GetBytes(text), code, sentence);

    [Fact]
    public async Task All_that_is_wrong_with_a_header_is_told_at_once()
    {
        using var catalogue = new Importing();
        var answer = await catalogue.TryAsync("capacitor", "maker,ratign,maker\n"u8.ToArray());
        answer.Refusals.Select(refusal => (refusal.Code, refusal.At)).ShouldBe([(Codes.UnknownField, "ratign"), (Codes.GivenTwice, "maker"), (Codes.ColumnMissing, "number")], ignoreOrder: true);
    }

    [Fact]
    public async Task A_file_in_another_encoding_is_told_with_the_line()
    {
        // µ and ° in Windows-1252 are single bytes (0xB5, 0xB0) that UTF-8 does not have there.
        await Refused([.. "number,maker\nA-1,M\nA-2,"u8, 0xB5, 0x0A], Codes.NotATable, "The file is not in UTF-8: line 3 holds a byte that is no letter there. Save it as CSV in UTF-8.");
        await Refused(Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes("number")).ToArray(), Codes.NotATable, "The file is in UTF-16.");
    }

    [Fact]
    public async Task A_byte_order_mark_is_left_aside_and_told()
    {
        using var catalogue = new Importing();
        var report = await catalogue.PreviewAsync("capacitor", "\uFEFFnumber,maker,title,status\nCK-5,Ombrel,5 microfarads,current\n");
        report.Same.ShouldBe(1);
        report.Notes[0].ShouldStartWith("The file begins with a byte order mark");
        report.Notes[1].ShouldStartWith("The file has no column rating, tolerance, ");
    }

    [Theory]
    [InlineData("A-1,M,t,current", 0, "")]
    [InlineData("A-1,M,t", 1, "")]
    [InlineData("A-1,M,t,current,and more", 1, "")]
    [InlineData("A-1,M,\"t,current", 1, "title")]
    public async Task A_row_with_a_wrong_number_of_cells_or_a_stray_quotation_mark_is_bad_by_itself(string row, int bad, string column)
    {
        using var catalogue = new Importing();
        var report = await catalogue.PreviewAsync("capacitor", $"number,maker,title,status\nA-0,M,t,current\n{row}\n");
        (report.New, report.Bad).ShouldBe((2 - bad, bad));
        report.Told.Where(told => told.State == RowState.Bad).ShouldAllBe(told => told.Row == 3 && told.Wrong.Single().Code == Codes.RowMalformed && told.Wrong.Single().Column == column);
    }

    [Fact]
    public async Task Limits_are_told_with_their_number()
    {
        var file = "number,maker,title,status,rating\nA-1,M,t,current,5 µF 370 V\nA-2,M,t,current,5 µF 370 V\n"u8.ToArray();
        await Refused(file, Codes.RequestTooLarge, "A file has at most 20 bytes.", new() { Bytes = 20 });
        await Refused(file, Codes.RequestTooLarge, "A file has at most 1 rows.", new() { Rows = 1 });

        using var catalogue = new Importing(limits: new() { Cell = 5, RowsTold = 1 });
        var report = (await catalogue.TryAsync("capacitor", file)).Value!;
        report.Bad.ShouldBe(2);
        report.Told.ShouldHaveSingleItem().Wrong.Single().Message.ShouldBe("A cell has at most 5 characters; this one has 10.");
    }

    private static async Task Refused(byte[] file, string code, string sentence, ExchangeLimits? limits = null)
    {
        using var catalogue = new Importing(limits: limits);
        var refusal = (await catalogue.TryAsync("capacitor", file)).Refusals[0];
        refusal.Code.ShouldBe(code);
        refusal.Message.ShouldStartWith(sentence);
    }
}
