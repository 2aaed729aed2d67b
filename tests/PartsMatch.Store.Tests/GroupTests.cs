using System.Globalization;

namespace PartsMatch.Store.Tests;

/// <summary>What waits together is written together, and each write is still its own.</summary>
public sealed class GroupTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Writes_that_wait_together_are_one_group_and_told_to_followers_once()
    {
        using var store = _folder.Open(() => A.Seed());
        var told = new List<CatalogueChangedEventArgs>();
        var writes = WhileTheWriterWaits(store, () =>
        {
            store.Changed += (_, change) => told.Add(change);
            return [store.AddAsync(A.Motor("ONE"), "a"), store.AddAsync(A.Motor("TWO"), "b"), store.ChangeAsync("ONE", 1, A.Motor("ONE", "changed"), "a"), store.SetStockAsync(A.Line("TWO"))];
        });

        (await writes).ShouldAllBe(result => result is WriteResult.Written);
        var change = told.ShouldHaveSingleItem();
        change.Parts.Select(part => (part.Number, part.Version)).ShouldBe([("ONE", 2), ("TWO", 1)]);
        change.Stock.ShouldBe([A.Line("TWO")]);
        change.After.Revision.ShouldBe(3); // made, the write that was waited in, this group
        change.After.ShouldBe(store.Catalogue);
    }

    [Fact]
    public async Task A_write_that_cannot_be_kept_takes_none_of_its_group_along()
    {
        using (var store = _folder.Open(() => A.Seed()))
        {
            // Half of a surrogate pair has no UTF-8 form, and LiteDB refuses it amid the transaction.
            var poison = A.Motor("BAD") with { Spec = [new("power", "\ud83d")] };
            Task<WriteResult> bad = null!;
            var others = await WhileTheWriterWaits(store, () =>
            {
                Task<WriteResult> before = store.AddAsync(A.Motor("ONE"), "a");
                bad = store.AddAsync(poison, "b");
                return [before, store.AddAsync(A.Motor("TWO"), "c")];
            });
            others.ShouldAllBe(result => result is WriteResult.Written);
            await Should.ThrowAsync<Exception>(() => bad);
            store.Find("BAD").ShouldBeNull();
            A.Written(await store.AddAsync(A.Motor("BAD"), "b")).Version.ShouldBe(1);
        }

        using var again = _folder.Open();
        again.Parts.Select(part => part.Number).ShouldBe(["BAD", "DEMO-1", "DEMO-2", "DEMO-3", "FIRST", "ONE", "TWO"]);
        (await again.HistoryAsync("BAD")).ShouldHaveSingleItem().Sequence.ShouldBe(7); // three seeded, one waited in, ONE, TWO, BAD
    }

    [Fact]
    public async Task A_follower_is_told_before_the_writer_and_its_fault_is_not_hidden()
    {
        using var store = _folder.Open();
        store.Changed += (_, change) => throw new NotSupportedException("A follower with a fault.");
        var fault = await Should.ThrowAsync<InvalidOperationException>(() => store.AddAsync(A.Motor(), "the counter"));
        fault.Message.ShouldStartWith("The write is on the disk");
        fault.InnerException.ShouldBeOfType<NotSupportedException>();
        store.Find("QX-1048").ShouldNotBeNull();
    }

    [Fact]
    public async Task What_is_acknowledged_is_in_the_data_file_and_no_longer_only_in_the_log()
    {
        using var store = _folder.Open();
        var logBytes = -1L;
        var dataBytes = new FileInfo(_folder.Data).Length;
        store.Changed += (_, _) => logBytes = new FileInfo(_folder.In("partsmatch-log.db")).Length;
        await store.AddAsync(A.Motor() with { Spec = [new("note", new string('x', 50_000))] }, "the counter");
        logBytes.ShouldBe(0);
        new FileInfo(_folder.Data).Length.ShouldBeGreaterThan(dataBytes + 50_000);
    }

    [Fact]
    public async Task Of_16_writers_on_one_part_none_loses_an_update()
    {
        const int writers = 16;
        const int updates = 20;
        using var store = _folder.Open();
        await store.AddAsync(Counting(0), "the start");
        await Task.WhenAll(Enumerable.Range(0, writers).Select(writer => Task.Run(async () =>
        {
            for (var done = 0; done < updates;)
            {
                var read = store.Find("QX-1048")!;
                var result = await store.ChangeAsync(read.Number, read.Version, Counting(Count(read) + 1), FormattableString.Invariant($"writer {writer}"));
                if (result is WriteResult.Written)
                    done++;
            }
        })));

        Count(store.Find("QX-1048")!).ShouldBe(writers * updates);
        var history = await store.HistoryAsync("QX-1048");
        history.Select(change => change.Version).ShouldBe(Enumerable.Range(1, 1 + (writers * updates)));
        history.Select(change => Count(change.After)).ShouldBe(Enumerable.Range(0, history.Count));
        history.GroupBy(change => change.By).ShouldAllBe(by => by.Key == "the start" || by.Count() == updates);

        static PartDraft Counting(int count) => A.Motor() with { Spec = [new("count", count.ToString(CultureInfo.InvariantCulture))] };
        static int Count(StoredPart part) => int.Parse(part.Spec[0].Text, CultureInfo.InvariantCulture);
    }

    [Fact]
    public async Task A_snapshot_stays_as_it_was_while_others_write()
    {
        using var store = _folder.Open(() => A.Seed());
        var before = store.Catalogue;
        await store.AddAsync(A.Motor(), "the counter");
        before.Parts.Count().ShouldBe(3);
        before.Find("QX-1048").ShouldBeNull();
        store.Revision.ShouldBe(before.Revision + 1);
    }

    [Fact]
    public void What_was_asked_for_before_the_store_is_closed_is_still_done()
    {
        Task<WriteResult>[] writes;
        using (var store = _folder.Open())
            writes = [.. Enumerable.Range(0, 500).Select(i => store.AddAsync(A.Motor(FormattableString.Invariant($"N-{i}")), "the counter"))];
        writes.ShouldAllBe(write => write.IsCompletedSuccessfully);
        using var again = _folder.Open();
        again.Parts.Count().ShouldBe(500);
    }

    [Fact]
    public async Task The_revision_goes_on_where_it_was()
    {
        long last;
        using (var store = _folder.Open())
        {
            await store.AddAsync(A.Motor(), "the counter");
            last = store.Revision;
        }

        using var again = _folder.Open();
        again.Revision.ShouldBe(last);
        await again.SetStockAsync(A.Line());
        again.Revision.ShouldBe(last + 1);
    }

    /// <summary>Holds the writer in a follower until everything is in its queue.</summary>
    private static async Task<WriteResult[]> WhileTheWriterWaits(PartStore store, Func<IEnumerable<Task<WriteResult>>> ask)
    {
        using var waiting = new SemaphoreSlim(0);
        using var goOn = new SemaphoreSlim(0);
        void Wait(object? sender, CatalogueChangedEventArgs change)
        {
            waiting.Release();
            goOn.Wait();
        }

        store.Changed += Wait;
        var first = store.AddAsync(A.Motor("FIRST"), "the start");
        await waiting.WaitAsync();
        store.Changed -= Wait;
        var asked = ask().ToList();
        goOn.Release();
        await first;
        return await Task.WhenAll(asked);
    }
}
