using System.Globalization;
using LiteDB;

namespace PartsMatch.Store.Tests;

public sealed class OwnershipTests : IDisposable
{
    private const string Address = "http://127.0.0.1:5080";

    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void While_another_process_has_the_folder_this_one_is_refused_and_told_who_and_where()
    {
        using var other = Holding();
        var refusal = _folder.Refusal();
        refusal.Reason.ShouldBe(RefusalReason.InUse);
        refusal.Holder.ShouldBe(new RunningStore(other.Id, Address));
        refusal.Message.ShouldBe(
            FormattableString.Invariant($"The data folder {_folder.Path} is in use by another PartsMatch (process {other.Id}, {Address}). ") +
            "Stop it, or give this one another folder with --data.");
    }

    [Fact]
    public void While_this_process_has_the_folder_another_is_refused_and_told_who_and_where()
    {
        using var store = _folder.Open();
        store.AnnounceAddress(Address);
        using var other = OtherProcess.Start("write", _folder.Path, "1");
        other.ReadLine().ShouldNotBeNull().ShouldContain(FormattableString.Invariant($"(process {Environment.ProcessId}, {Address})"));
        other.Ended().ShouldBe(3);
    }

    [Fact]
    public void A_second_opener_in_the_same_process_is_refused_too()
    {
        using var store = _folder.Open();
        _folder.Refusal().Message.ShouldContain("which has not said its address");
    }

    [Fact]
    public void Who_holds_the_folder_is_known_while_it_does_and_no_longer()
    {
        PartStore.WhoHolds(_folder.Path).ShouldBeNull();
        using (var store = _folder.Open())
        {
            PartStore.WhoHolds(_folder.Path).ShouldBe(new RunningStore(Environment.ProcessId, null));
            store.AnnounceAddress(Address);
            PartStore.WhoHolds(_folder.Path).ShouldBe(new RunningStore(Environment.ProcessId, Address));
        }

        PartStore.WhoHolds(_folder.Path).ShouldBeNull();
        PartStore.WhoHolds(_folder.In("nowhere")).ShouldBeNull();
    }

    [Fact]
    public void A_process_that_ends_in_order_lets_go()
    {
        using var other = Holding();
        other.Ended().ShouldBe(0);
        PartStore.WhoHolds(_folder.Path).ShouldBeNull();
        _folder.Open().Dispose();
    }

    [Fact]
    public void A_killed_process_leaves_its_lock_file_and_blocks_nobody()
    {
        using (var other = Holding())
            other.Kill();
        File.ReadAllText(_folder.In("partsmatch.lock")).ShouldContain(Address);
        PartStore.WhoHolds(_folder.Path).ShouldBeNull();
        using var store = _folder.Open();
        PartStore.WhoHolds(_folder.Path).ShouldBe(new RunningStore(Environment.ProcessId, null));
    }

    [Fact]
    public void The_data_file_is_never_shared()
    {
        using var store = _folder.Open();
        Should.Throw<IOException>(() => new FileStream(_folder.Data, System.IO.FileMode.Open, FileAccess.Read, FileShare.ReadWrite));
        foreach (var connection in new[] { "direct", "shared" })
            Should.Throw<Exception>(() => Count($"Filename={_folder.Data};Connection={connection}"));

        static int Count(string connection)
        {
            using var database = new LiteDatabase(connection);
            return database.GetCollection("parts").Count();
        }
    }

    [Fact]
    public void A_file_that_another_program_has_open_is_refused_and_left_untouched()
    {
        _folder.Open().Dispose();
        using (var foreign = new LiteDatabase($"Filename={_folder.Data};Connection=direct"))
        {
            foreign.GetCollectionNames().ShouldContain("meta");
            var refusal = _folder.Refusal();
            refusal.Reason.ShouldBe(RefusalReason.InUse);
            refusal.Message.ShouldContain($"{_folder.Data} is open in another program");
        }

        _folder.Open().Dispose();
    }

    [Fact]
    public void A_folder_that_cannot_be_made_is_refused()
    {
        File.WriteAllText(_folder.In("file"), "not a folder");
        var refusal = Should.Throw<StoreRefusedException>(() => PartStore.Open(new StoreOptions(_folder.In("file")), TimeProvider.System));
        refusal.Reason.ShouldBe(RefusalReason.NotWritable);
        refusal.Message.ShouldContain(_folder.In("file"));
    }

    [Fact]
    public void A_folder_whose_hold_cannot_be_opened_is_refused()
    {
        Directory.CreateDirectory(_folder.In("partsmatch.hold"));
        _folder.Refusal().Reason.ShouldBe(RefusalReason.NotWritable);
    }

    [Theory]
    [InlineData("")]
    [InlineData("\n\n\n")]
    [InlineData("twelve\nhttp://127.0.0.1:1\n")]
    [InlineData("99999999999999999999")]
    public void A_lock_file_of_nonsense_is_no_obstacle(string text)
    {
        File.WriteAllText(_folder.In("partsmatch.lock"), text);
        PartStore.WhoHolds(_folder.Path).ShouldBeNull();
        using var store = _folder.Open();
        File.ReadAllLines(_folder.In("partsmatch.lock"))[0].ShouldBe(Environment.ProcessId.ToString(CultureInfo.InvariantCulture));
    }

    private OtherProcess Holding()
    {
        var other = OtherProcess.Start("hold", _folder.Path, Address);
        other.ReadLine().ShouldBe("holding");
        return other;
    }
}
