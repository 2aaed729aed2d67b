using System.Globalization;

namespace PartsMatch.Store.Tests;

public sealed class HistoryTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Each_write_leaves_an_entry_with_who_when_what_before_and_after()
    {
        using (var store = _folder.Open(clock: new StoppedClock(A.Noon)))
        {
            await store.AddAsync(A.Motor(), "the counter");
            await store.AddAsync(A.Motor("ZK-7"), "the van");
            await store.ChangeAsync("QX-1048", 1, A.Motor(title: "1/3 hp"), "the shop");
        }

        using var again = _folder.Open(clock: new StoppedClock(A.Noon.AddDays(1)));
        await again.RetireAsync("QX-1048", 2, "the maker's list");
        var history = await again.HistoryAsync("qx-1048");

        history.Select(change => (change.Sequence, change.What, change.By, change.At, change.Version)).ShouldBe(
        [
            (1, PartChangeKind.Added, "the counter", A.Noon, 1),
            (3, PartChangeKind.Changed, "the shop", A.Noon, 2),
            (4, PartChangeKind.Retired, "the maker's list", A.Noon.AddDays(1), 3),
        ]);
        history[0].Before.ShouldBeNull();
        history[1].Before!.Title.ShouldBe(A.Motor().Title);
        history[1].After.Title.ShouldBe("1/3 hp");
        history[2].Before!.Status.ShouldBe(PartStatus.Current);
        history[2].After.Status.ShouldBe(PartStatus.Retired);
        history[2].After.Spec.ShouldBe(A.Motor().Spec);
    }

    [Fact]
    public async Task A_retired_part_can_come_back_and_its_history_tells()
    {
        using var store = _folder.Open();
        await store.AddAsync(A.Motor(), "the counter");
        await store.ChangeAsync("QX-1048", 1, A.Motor() with { Status = PartStatus.Retired }, "the counter");
        await store.ChangeAsync("QX-1048", 2, A.Motor(), "the counter");
        (await store.HistoryAsync("QX-1048")).Select(change => change.What).ShouldBe(
            [PartChangeKind.Added, PartChangeKind.Retired, PartChangeKind.Changed]);
        store.Find("QX-1048")!.Status.ShouldBe(PartStatus.Current);
    }

    [Fact]
    public async Task Nothing_depends_on_the_machines_language()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            using (var store = _folder.Open(() => A.Seed(), new StoppedClock(A.Noon)))
                await store.SetStockAsync(A.Line("DEMO-1", price: 1234.56m));
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("th-TH"); // counts years from 543 BC
            using var again = _folder.Open();
            again.Stock("DEMO-1")!.Price.ShouldBe(1234.56m);
            again.Find("DEMO-1")!.SupersededBy.ShouldBe(A.Motor().SupersededBy);
            (await again.HistoryAsync("DEMO-1")).ShouldHaveSingleItem().At.ShouldBe(A.Noon);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
