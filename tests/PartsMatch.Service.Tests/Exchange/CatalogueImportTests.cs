using PartsMatch.Service.Counter;
using PartsMatch.Service.Exchange;
using PartsMatch.Store;

namespace PartsMatch.Service.Tests.Exchange;

/// <summary>What a table says beside a catalogue small enough to keep in one's head (Support/Seed.cs), and what is written of it.</summary>
public sealed class CatalogueImportTests : IDisposable
{
    private const string Head = "number,maker,title,status,power,speed\n";

    private readonly Importing _catalogue = new();

    public void Dispose() => _catalogue.Dispose();

    [Fact]
    public async Task A_preview_says_of_each_row_whether_it_is_new_changed_the_same_or_bad_and_writes_nothing()
    {
        var revision = _catalogue.Store.Revision;
        var report = await _catalogue.PreviewAsync("motor", Head
            + "N-1,Quennor,a new one,current,1/2 hp,1075 rpm\n"
            + "QN-200,Quennor,fan motor 1/4 hp 230 V only,discontinued,1/3 hp,\n"
            + "QN-100,Quennor,fan motor 1/4 hp,current,1/4 hp,1075 rpm\n"
            + "N-2,Quennor,a bad one,current,1 banana,1075 rpm\n");
        (report.Rows, report.New, report.Changed, report.Same, report.Bad, report.Conflicts, report.IsTaken).ShouldBe((4, 1, 1, 1, 1, 0, false));
        report.Told.Select(row => (row.Row, row.Number, row.State)).ShouldBe([(2, "N-1", RowState.New), (3, "QN-200", RowState.Changed), (5, "N-2", RowState.Bad)]);
        report.Told[1].Changes.ShouldBe([new("status", "current", "discontinued"), new("power", "1/4 hp", "1/3 hp"), new("speed", "1075 rpm", "")]);
        report.Told[2].Wrong.ShouldHaveSingleItem().Column.ShouldBe("power");
        report.Told[2].Wrong[0].Message.ShouldContain("such as 1/4 hp");
        _catalogue.Store.Revision.ShouldBe(revision);
    }

    [Fact]
    public async Task All_that_is_wrong_with_a_row_is_said_at_once()
    {
        var report = await _catalogue.PreviewAsync("motor", Head + "--,,a title,sold,1 banana,fast\n");
        report.Told.ShouldHaveSingleItem().Wrong.Select(wrong => (wrong.Column, wrong.Code)).ShouldBe(
            [("number", Codes.NumberUnusable), ("maker", Codes.Empty), ("status", Codes.Unreadable), ("power", Codes.Unreadable), ("speed", Codes.Unreadable)], ignoreOrder: true);
        report.Told[0].Wrong.Single(wrong => wrong.Column == "status").Message.ShouldBe("A status is one of current, discontinued, retired.");
    }

    [Fact]
    public async Task Taking_writes_the_good_rows_and_a_second_time_nothing()
    {
        const string Table = Head + "N-1,Quennor,a new one,current,1/2 hp,1075 rpm\nqn 200,Quennor,fan motor 1/4 hp 230 V only,retired,1/3 hp,1075 rpm\nN-2,Quennor,a bad one,current,1 banana,\n";
        var first = await _catalogue.TakeAsync("motor", Table);
        (first.New, first.Changed, first.Bad, first.IsTaken).ShouldBe((1, 1, 1, true));
        var taken = _catalogue.Store.Find("QN-200")!;
        (taken.Number, taken.Version, taken.Status).ShouldBe(("qn 200", 2, PartStatus.Retired));
        // What the table has no column for stays.
        taken.Spec.ShouldBe([new("power", "1/3 hp"), new("speed", "1075 rpm"), new("voltage", "230 V"), new("phase", "1"), new("frequency", "60 Hz"), new("shaftDiameter", "1/2 in")]);
        _catalogue.Store.Find("N-2").ShouldBeNull();
        (await _catalogue.Store.HistoryAsync("N-1")).ShouldHaveSingleItem().By.ShouldBe("the test");

        var revision = _catalogue.Store.Revision;
        var second = await _catalogue.TakeAsync("motor", Table);
        (second.New, second.Changed, second.Same, second.Bad).ShouldBe((0, 0, 2, 1));
        _catalogue.Store.Revision.ShouldBe(revision);
    }

    [Fact]
    public async Task A_row_that_only_spells_a_value_in_another_way_is_the_same() =>
        (await _catalogue.PreviewAsync("motor", Head + "QN-100, Quennor ,fan motor 1/4 hp,CURRENT,0.25 HP, 1075 r/min\n")).Same.ShouldBe(1);

    [Fact]
    public async Task What_someone_else_wrote_since_the_preview_is_told_and_left_as_it_is()
    {
        const string Table = Head + "QN-100,Quennor,by the file,current,1/4 hp,1075 rpm\nQN-200,Quennor,by the file,current,1/4 hp,1075 rpm\n";
        var seen = (await _catalogue.PreviewAsync("motor", Table)).Seen;
        var read = _catalogue.Store.Find("QN-100")!;
        await _catalogue.Store.ChangeAsync(read.Number, read.Version, new(read.Number, read.Kind, read.Maker, "by the counter", read.Status, read.Spec, read.SupersededBy), "the counter");

        var report = await _catalogue.TakeAsync("motor", Table, seen);
        (report.Changed, report.Conflicts).ShouldBe((1, 1));
        var conflict = report.Told.Single(row => row.State == RowState.Conflict);
        (conflict.Number, conflict.Wrong.ShouldHaveSingleItem().Code).ShouldBe(("QN-100", Codes.ChangedSince));
        conflict.Changes.ShouldBe([new("title", "by the counter", "by the file")]);
        _catalogue.Store.Find("QN-100")!.Title.ShouldBe("by the counter");
        _catalogue.Store.Find("QN-200")!.Title.ShouldBe("by the file");
    }

    [Fact]
    public async Task What_someone_else_writes_while_the_file_is_taken_is_told_and_left_as_it_is()
    {
        // The counter's change is asked for before the group of the file, so the writer does it first.
        Task<WriteResult>? counter = null;
        var report = await _catalogue.TakeAsync("motor", Head + "QN-100,Quennor,by the file,current,1/4 hp,1075 rpm\n", progress: new Heard(_ =>
        {
            var read = _catalogue.Store.Find("QN-100")!;
            counter ??= _catalogue.Store.ChangeAsync(read.Number, read.Version, new(read.Number, read.Kind, read.Maker, "by the counter", read.Status, read.Spec, read.SupersededBy), "the counter");
        }));
        (await counter!).ShouldBeOfType<WriteResult.Written>();
        (report.Changed, report.Conflicts).ShouldBe((0, 1));
        _catalogue.Store.Find("QN-100")!.Title.ShouldBe("by the counter");
    }

    [Fact]
    public async Task Of_a_number_that_stands_in_two_rows_neither_is_taken()
    {
        var report = await _catalogue.TakeAsync("motor", Head + "N-1,Quennor,one,current,,\nN-3,Quennor,three,current,,\nn 1,Quennor,other,current,,\n");
        (report.New, report.Bad).ShouldBe((1, 2));
        report.Told.Where(row => row.State == RowState.Bad).ShouldAllBe(row => row.Wrong.Single().Code == Codes.GivenTwice && row.Wrong.Single().Message.EndsWith("stands in rows 2, 4. Leave one of them.", StringComparison.Ordinal));
        _catalogue.Store.Find("N-1").ShouldBeNull();
    }

    [Fact]
    public async Task A_number_of_another_family_is_told()
    {
        var wrong = (await _catalogue.PreviewAsync("motor", Head + "CK-5,Ombrel,x,current,,\n")).Told.Single().Wrong.Single();
        (wrong.Column, wrong.Code, wrong.Message).ShouldBe(("number", Codes.KindMismatch, "CK-5 is a run capacitor in the catalogue and cannot become a fan motor."));
    }

    [Fact]
    public async Task Prices_and_what_is_at_hand_are_a_table_of_their_own_where_the_last_word_stands()
    {
        const string Table = "number,price,currency,onHand\nQN-100,84.5,USD,2\nQN-200,12.00,EUR,\nQN-300,91,USD,0\nNIX,1,USD,1\nZV-9,\"1,5\",usd,many\n";
        var report = await _catalogue.TakeAsync("stock", Table);
        (report.New, report.Changed, report.Same, report.Bad).ShouldBe((1, 1, 1, 2));
        report.Told.Single(row => row.Number == "QN-100").Changes.ShouldBe([new("price", "84.50", "84.5"), new("onHand", "3", "2")]);
        report.Told.Single(row => row.Number == "NIX").Wrong.Single().Code.ShouldBe(Codes.PartNotFound);
        report.Told.Single(row => row.Number == "ZV-9").Wrong.Select(wrong => wrong.Column).ShouldBe(["price", "currency", "onHand"], ignoreOrder: true);
        _catalogue.Store.Stock("QN-200").ShouldBe(new("QN-200", 12.00m, "EUR", null));
        (await _catalogue.TakeAsync("stock", Table)).Same.ShouldBe(3);
    }

    [Fact]
    public async Task A_table_of_supersessions_says_all_there_is_of_a_number_it_names_and_a_bad_row_keeps_back_its_neighbours()
    {
        const string Table = "number,supersededBy,saidBy,on\nZV-7,QN-100,maker,2021-04-30\nQN-200,QN-100,maker,2024-01-02\nZV-7,QN-300,counter,2022-02-02\nQN-300,QN-100,maker,yesterday\nQN-300,QN-200,maker,2024-01-02\n";
        var report = await _catalogue.TakeAsync("supersessions", Table);
        (report.New, report.Changed, report.Bad).ShouldBe((1, 2, 2));
        report.Told.Single(row => row.Row == 2).Changes.ShouldBe([new("supersededBy", "QN-100, maker, 2021-04-30", "QN-100, maker, 2021-04-30; QN-300, counter, 2022-02-02")]);
        report.Told.Where(row => row.Number == "QN-300").Select(row => row.Wrong.Single().Column).ShouldBe(["on", ""]);
        _catalogue.Store.Find("ZV-7")!.SupersededBy.ShouldBe([new("QN-100", "maker", new(2021, 4, 30)), new("QN-300", "counter", new(2022, 2, 2))]);
        _catalogue.Store.Find("QN-300")!.SupersededBy.ShouldBeEmpty();
        (await _catalogue.TakeAsync("supersessions", Table)).Same.ShouldBe(3);
    }

    [Fact]
    public async Task A_taking_that_is_cut_off_leaves_whole_groups_and_done_again_completes_them()
    {
        const int Rows = 9_000;
        var table = "number,maker,title,status,rating\n" + string.Concat(Enumerable.Range(1, Rows).Select(at => FormattableString.Invariant($"CX-{at},Ombrel,capacitor {at},current,5 µF 370 V\n")));
        using var cut = new CancellationTokenSource();
        await Should.ThrowAsync<OperationCanceledException>(() => _catalogue.TakeAsync("capacitor", table, progress: new Heard(come => { if (come.Written > 0) cut.Cancel(); }), stop: cut.Token));
        var written = _catalogue.Store.Parts.Count(part => part.Number.StartsWith("CX-", StringComparison.Ordinal));
        written.ShouldBeInRange(1, Rows - 1);

        var heard = new List<ImportProgress>();
        var again = await _catalogue.TakeAsync("capacitor", table, progress: new Heard(heard.Add));
        (again.New, again.Same).ShouldBe((Rows - written, written));
        heard[^1].ShouldBe(new(Rows, Rows, Rows - written));
        _catalogue.Store.Parts.Where(part => part.Number.StartsWith("CX-", StringComparison.Ordinal)).ShouldAllBe(part => part.Version == 1);
    }

    private sealed class Heard(Action<ImportProgress> hear) : IProgress<ImportProgress>
    {
        public void Report(ImportProgress value) => hear(value);
    }
}
