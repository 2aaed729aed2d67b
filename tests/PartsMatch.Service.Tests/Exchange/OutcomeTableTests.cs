using PartsMatch.Service.Counter;
using PartsMatch.Service.Exchange;
using PartsMatch.Service.Hosting;
using PartsMatch.Service.Tests.Support;
using PartsMatch.Store;

namespace PartsMatch.Service.Tests.Exchange;

/// <summary>What became of parts, in and out as a table.</summary>
public sealed class OutcomeTableTests : IDisposable
{
    private const string Header = "id,kind,on,place,oldPart,plate,site,part,result,reason,note,corrects\n";

    private readonly Importing _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task New_rows_are_previewed_then_taken_and_are_the_same_afterwards()
    {
        const string csv = Header + "new-1,motor,2026-02-03,shed,ZV-7,,volts=202 V,qn100,reworked,something was missing,no sleeve,\nnew-2,motor,2026-02-04,shed,,,,QN-200,right first time,,,new-1\n";
        (await _shop.PreviewAsync("outcomes", csv)).New.ShouldBe(2);
        (await FindAsync("new-1")).ShouldBeNull();

        var taken = await _shop.TakeAsync("outcomes", csv);
        (taken.New, taken.Bad, taken.Conflicts).ShouldBe((2, 0, 0));
        var first = (await FindAsync("new-1")).ShouldNotBeNull();
        (first.By, first.CorrectedBy, first.Said.Part, first.Said.Note).ShouldBe(("the test", "new-2", "QN-100", "no sleeve"));
        first.Said.Site.ShouldBe([new("volts", "202 V")]);

        var again = await _shop.TakeAsync("outcomes", csv);
        (again.Same, again.Rows).ShouldBe((2, 2));
    }

    [Fact]
    public async Task Every_bad_row_is_named_with_all_that_is_wrong_by_column_and_the_good_ones_are_taken()
    {
        var report = await _shop.TakeAsync("outcomes", $"""
            {Header.TrimEnd()}
            good,motor,2026-02-03,shed,,,,QN-100,right first time,,,
            two words,motr,soon,{new string('x', 101)},NO-SUCH,,,NO-SUCH,fine,bad luck,{new string('y', 501)},no id
            fields,motor,2026-02-03,shed,,power=1 banana; colour=red,no equals,QN-100,right first time,failed again,,
            kinds,motor,2026-02-03,shed,CK-5,,,CK-5,came back,,,
            late,motor,2999-01-01,shed,,,,QN-100,right first time,,,
            job-2,motor,2026-01-10,elsewhere,,,,QN-200,right first time,,,
            lost,motor,2026-01-10,shed,,,,QN-200,right first time,,,no-such
            again,motor,2026-01-10,shed,,,,QN-200,right first time,,,job-1
            short,motor
            """);
        (report.New, report.Bad, report.Rows).ShouldBe((1, 8, 9));
        (await FindAsync("good")).ShouldNotBeNull();
        Wrong(report, 3).ShouldBe(
        [
            ("id", Codes.IdUnusable), ("kind", Codes.Unreadable), ("on", Codes.Unreadable), ("place", Codes.TooLong), ("note", Codes.TooLong), ("oldPart", Codes.PartNotFound), ("part", Codes.PartNotFound),
            ("result", Codes.Unreadable), ("reason", Codes.Unreadable), ("corrects", Codes.IdUnusable),
        ]);
        Wrong(report, 4).ShouldBe([("plate", Codes.Unreadable), ("plate", Codes.UnknownField), ("reason", Codes.ReasonUnneeded), ("site", Codes.Unreadable)]);
        Wrong(report, 5).ShouldBe([("oldPart", Codes.KindMismatch), ("part", Codes.KindMismatch), ("reason", Codes.Empty)]);
        Wrong(report, 6).ShouldBe([("on", Codes.DayToCome)]);
        Wrong(report, 7).ShouldBe([("id", Codes.IdTaken)]);
        Wrong(report, 8).ShouldBe([("corrects", Codes.OutcomeNotFound)]);
        Wrong(report, 9).ShouldBe([("corrects", Codes.AlreadyCorrected)]);
        Wrong(report, 10).ShouldBe([(string.Empty, Codes.RowMalformed)]);
    }

    [Fact]
    public async Task An_id_in_two_rows_is_taken_from_neither_and_a_record_is_corrected_once_in_a_file_too()
    {
        var report = await _shop.TakeAsync("outcomes", Header + "twice,motor,2026-02-03,,,,,QN-100,right first time,,,\ntwice,motor,2026-02-03,,,,,QN-100,right first time,,,\nb,motor,2026-02-03,,,,,QN-100,right first time,,,job-2\nc,motor,2026-02-03,,,,,QN-100,right first time,,,job-2\n");
        Wrong(report, 2).ShouldBe([("id", Codes.GivenTwice)]);
        Wrong(report, 3).ShouldBe([("id", Codes.GivenTwice)]);
        Wrong(report, 5).ShouldBe([("corrects", Codes.AlreadyCorrected)]);
        report.New.ShouldBe(1);
    }

    [Fact]
    public async Task An_outcome_of_another_kind_is_corrected_neither_in_the_store_nor_in_the_file()
    {
        var report = await _shop.TakeAsync("outcomes", Header + "a,capacitor,2026-02-03,,,,,CK-5,right first time,,,job-2\nb,capacitor,2026-02-03,,,,,CK-5,right first time,,,\nc,motor,2026-02-03,,,,,QN-100,right first time,,,b\n");
        Wrong(report, 2).ShouldBe([("corrects", Codes.KindMismatch)]);
        Wrong(report, 4).ShouldBe([("corrects", Codes.KindMismatch)]);
        (report.New, (await FindAsync("job-2"))!.CorrectedBy).ShouldBe((1, null));
    }

    [Theory]
    [InlineData("a=1; b=2 \\; 3;c=\\\\ \\x", "a|1,b|2 ; 3,c|\\ \\x")]
    [InlineData("", "")]
    [InlineData(" ; ;", "")]
    [InlineData("a=b=c", "a|b=c")]
    public void A_cell_of_fields_reads_as_it_was_meant(string cell, string expected) =>
        string.Join(',', FieldsCell.Read(cell).ShouldNotBeNull().Select(text => $"{text.Name}|{text.Text}")).ShouldBe(expected);

    [Fact]
    public void What_a_cell_of_fields_is_written_as_reads_back()
    {
        Store.NamedText[] texts = [new("power", "1/4 hp"), new("note", "a; b \\; c\\"), new("other", "= and, \"quotes\"")];
        FieldsCell.Read(FieldsCell.Write(texts)).ShouldNotBeNull().Select(text => new Store.NamedText(text.Name, text.Text)).ShouldBe(texts);
        FieldsCell.Read("power 1/4 hp").ShouldBeNull();
    }

    [Fact]
    public void A_seed_with_a_bad_outcome_refuses_the_start_and_says_where()
    {
        using var folder = new TestFolder();
        Seed.WriteTo(folder);
        folder.Write("outcomes.csv", Header + "a,motor,2026-02-03,,,,,QN-100,right first time,,,b\nb,motor,2026-02-03,,,power=1 banana,,QN-999,right first time,,,\n");
        var message = Should.Throw<StartRefusedException>(() => SeedCatalogue.Read(folder.Path)).Message;
        message.ShouldContain("outcomes.csv, row 2, corrects: No outcome before this one has the id b");
        message.ShouldContain("outcomes.csv, row 3, plate:");
        message.ShouldContain("outcomes.csv, row 3, part: The catalogue has no part “QN-999”.");
    }

    private static (string Column, string Code)[] Wrong(ImportReport report, int row) => [.. report.Told.Single(one => one.Row == row).Wrong.Select(wrong => (wrong.Column, wrong.Code))];

    private async Task<StoredOutcome?> FindAsync(string id) => (await _shop.Store.Outcomes.FindAsync([id])).GetValueOrDefault(id);
}
