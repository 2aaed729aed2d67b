namespace PartsMatch.Store.Tests;

/// <summary>Many writes that reach the disk together.</summary>
public sealed class WritingManyTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task They_are_one_group_and_each_is_judged_by_itself_in_their_order()
    {
        using (var store = _folder.Open(() => A.Seed()))
        {
            var revision = store.Revision;
            var results = await store.WriteAllAsync(
                [
                    new AskedWrite.Add(A.Motor("N-1")),
                    new AskedWrite.Add(A.Motor("n 1")),
                    new AskedWrite.Change(1, A.Motor("DEMO-1", "changed")),
                    new AskedWrite.Change(1, A.Motor("DEMO-1", "too late")),
                    new AskedWrite.Change(1, A.Motor("NIX")),
                    new AskedWrite.SetStock(A.Line("N-1", onHand: 9)),
                ],
                "the importer");
            results.Select(result => result.GetType()).ShouldBe(
                [typeof(WriteResult.Written), typeof(WriteResult.AlreadyThere), typeof(WriteResult.Written), typeof(WriteResult.Conflict), typeof(WriteResult.NotThere), typeof(WriteResult.Written)]);
            store.Revision.ShouldBe(revision + 1);
        }

        using var again = _folder.Open();
        again.Find("DEMO-1")!.Title.ShouldBe("changed");
        again.Stock("N-1")!.OnHand.ShouldBe(9);
        (await again.HistoryAsync("DEMO-1"))[^1].By.ShouldBe("the importer");
    }

    [Fact]
    public async Task What_was_written_after_an_entry_of_the_record_is_known_by_key_also_after_a_restart()
    {
        long seen;
        using (var store = _folder.Open(() => A.Seed()))
        {
            seen = store.Catalogue.Sequence;
            seen.ShouldBe(3); // three seeded
            (await store.KeysChangedAfterAsync(seen)).ShouldBeEmpty();
            await store.AddAsync(A.Motor("N-1"), "a");
            await store.RetireAsync("DEMO-2", 1, "b");
            await store.SetStockAsync(A.Line("DEMO-3"));
            (await store.KeysChangedAfterAsync(seen)).ShouldBe(["N1", "DEMO2"], ignoreOrder: true);
        }

        using var again = _folder.Open();
        again.Catalogue.Sequence.ShouldBe(seen + 2);
        (await again.KeysChangedAfterAsync(seen + 1)).ShouldBe(["DEMO2"]);
    }
}
