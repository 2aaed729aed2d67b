namespace PartsMatch.Store.Tests;

public sealed class BackUpTests : IDisposable
{
    private readonly TestFolder _folder = new();
    private readonly TestFolder _other = new();

    public void Dispose()
    {
        _folder.Dispose();
        _other.Dispose();
    }

    [Fact]
    public async Task A_back_up_made_while_others_write_is_a_store_with_all_that_was_acknowledged_before()
    {
        using (var store = _folder.Open(() => A.Seed()))
        {
            await store.AddAsync(A.Motor(), "the counter");
            var meanwhile = Enumerable.Range(0, 100).Select(i => store.AddAsync(A.Motor(FormattableString.Invariant($"MEANWHILE-{i}")), "the counter"));
            var writing = Task.WhenAll(meanwhile.ToList());
            await store.BackUpAsync(_other.Data);
            await writing;
        }

        using var copy = _other.Open();
        copy.Find("QX-1048").ShouldNotBeNull();
        copy.Parts.Count().ShouldBeInRange(4, 104);
        (await copy.HistoryAsync("QX-1048")).ShouldHaveSingleItem();
        A.Written(await copy.AddAsync(A.Motor("AFTER"), "the counter"));
    }

    [Fact]
    public async Task A_back_up_overwrites_nothing_and_the_store_goes_on()
    {
        using var store = _folder.Open();
        File.WriteAllText(_other.Data, "precious");
        await Should.ThrowAsync<IOException>(() => store.BackUpAsync(_other.Data));
        File.ReadAllText(_other.Data).ShouldBe("precious");
        A.Written(await store.AddAsync(A.Motor(), "the counter"));
    }
}
