namespace PartsMatch.Store.Tests;

public sealed class SeedingTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task A_new_store_holds_the_seed_and_each_part_says_where_it_came_from()
    {
        using var store = _folder.Open(() => A.Seed(parts: 12), new StoppedClock(A.Noon));
        store.Parts.Select(part => part.Number).ShouldBe(
            ["DEMO-1", "DEMO-10", "DEMO-11", "DEMO-12", "DEMO-2", "DEMO-3", "DEMO-4", "DEMO-5", "DEMO-6", "DEMO-7", "DEMO-8", "DEMO-9"]);
        store.Stock("DEMO-7")!.OnHand.ShouldBe(7);
        var entry = (await store.HistoryAsync("DEMO-7")).ShouldHaveSingleItem();
        (entry.What, entry.By, entry.At, entry.Version).ShouldBe((PartChangeKind.Seeded, "the demo catalogue", A.Noon, 1));
    }

    [Fact]
    public async Task A_store_that_is_there_is_not_seeded_again()
    {
        using (var store = _folder.Open(() => A.Seed()))
            await store.RetireAsync("DEMO-2", 1, "the counter");
        using var again = _folder.Open(() => throw new InvalidOperationException("The seed was asked for."));
        again.Find("DEMO-2")!.Status.ShouldBe(PartStatus.Retired);
    }

    [Fact]
    public void A_seeding_that_was_killed_is_begun_anew()
    {
        File.WriteAllText(_folder.In("partsmatch.db.new"), "half of a store");
        using var store = _folder.Open(() => A.Seed());
        store.Parts.Count().ShouldBe(3);
        File.Exists(_folder.In("partsmatch.db.new")).ShouldBeFalse();
    }

    [Fact]
    public void A_seed_with_a_number_twice_is_our_own_mistake_and_leaves_no_store()
    {
        var seed = A.Seed() with { Parts = [A.Motor("DEMO-1"), A.Motor("demo1")] };
        Should.Throw<InvalidOperationException>(() => _folder.Open(() => seed)).Message.ShouldContain("DEMO-1");
        File.Exists(_folder.Data).ShouldBeFalse();
        using var store = _folder.Open();
        store.Parts.ShouldBeEmpty();
    }

    [Fact]
    public void A_clean_end_leaves_the_data_what_is_derived_from_it_a_mark_and_the_empty_hold()
    {
        _folder.Open(() => A.Seed()).Dispose();
        Directory.GetFiles(_folder.Path).Select(Path.GetFileName).Order(StringComparer.Ordinal).ShouldBe(["partsmatch.db", "partsmatch.end", "partsmatch.hold", "partsmatch.parts"]);
    }

    [Fact]
    public void The_default_folder_is_the_users_own() =>
        StoreOptions.DefaultFolder().ShouldBe(Path.Combine(
            Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify), "partsmatch"));
}
