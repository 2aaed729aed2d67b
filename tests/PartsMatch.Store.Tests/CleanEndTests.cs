namespace PartsMatch.Store.Tests;

/// <summary>What a store left in order is believed, and what it is not.</summary>
public sealed class CleanEndTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public CleanEndTests() => _folder.Open(() => A.Seed(parts: 40)).Dispose();

    private string Parts => _folder.In("partsmatch.parts");

    private string Mark => _folder.In("partsmatch.end");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void The_mark_is_gone_while_the_store_is_open()
    {
        using var store = _folder.Open();
        File.Exists(Mark).ShouldBeFalse();
    }

    [Fact]
    public void While_the_files_are_as_they_were_left_not_every_document_is_read_again()
    {
        var left = File.GetLastWriteTimeUtc(_folder.Data);
        DamageTheHistory();
        _folder.Refusal().Reason.ShouldBe(RefusalReason.Corrupt);

        File.SetLastWriteTimeUtc(_folder.Data, left);
        using var store = _folder.Open();
        store.Parts.Count().ShouldBe(40);
    }

    [Fact]
    public void Without_the_mark_every_document_is_read()
    {
        var left = File.GetLastWriteTimeUtc(_folder.Data);
        DamageTheHistory();
        File.SetLastWriteTimeUtc(_folder.Data, left);
        File.Delete(Mark);
        _folder.Refusal().Reason.ShouldBe(RefusalReason.Corrupt);
    }

    [Theory]
    [InlineData("gone")]
    [InlineData("empty")]
    [InlineData("cut short")]
    [InlineData("a bit turned")]
    [InlineData("of another format")]
    [InlineData("of another store")]
    public void What_is_derived_is_made_anew_when_it_is(string what)
    {
        Spoil(what);
        using var store = _folder.Open();
        store.Parts.Select(part => part.Number).ShouldBe(Enumerable.Range(1, 40).Select(number => $"DEMO-{number}").Order(StringComparer.Ordinal));
        store.Stock("DEMO-40")!.OnHand.ShouldBe(40);
    }

    [Fact]
    public async Task A_back_up_put_in_the_files_place_is_read_whole()
    {
        var backUp = _folder.In("back-up.db");
        using (var store = _folder.Open())
        {
            await store.BackUpAsync(backUp);
            await store.AddAsync(A.Motor("LATER"), "the counter");
        }

        File.Move(backUp, _folder.Data, overwrite: true);
        using var again = _folder.Open();
        again.Find("LATER").ShouldBeNull();
        A.Written(await again.AddAsync(A.Motor("LATER"), "the counter")).Version.ShouldBe(1);
    }

    [Fact]
    public async Task What_was_written_last_is_in_it()
    {
        using (var store = _folder.Open())
        {
            await store.RetireAsync("DEMO-7", 1, "the counter");
            await store.SetStockAsync(A.Line("DEMO-8", price: 12.340m, onHand: null));
        }

        File.Exists(Mark).ShouldBeTrue();
        using var again = _folder.Open();
        again.Find("DEMO-7")!.Status.ShouldBe(PartStatus.Retired);
        again.Stock("DEMO-8").ShouldBe(A.Line("DEMO-8", price: 12.340m, onHand: null));
        again.Stock("DEMO-8")!.Price!.Value.Scale.ShouldBe((byte)3);
        again.Revision.ShouldBe(3);
    }

    private void DamageTheHistory()
    {
        var bytes = File.ReadAllBytes(_folder.Data);
        bytes.AsSpan(bytes.AsSpan().IndexOf("Seeded"u8), "Seeded".Length).Fill(0xFF); // no byte of any UTF-8 text
        File.WriteAllBytes(_folder.Data, bytes);
    }

    private void Spoil(string what)
    {
        var whole = File.ReadAllBytes(Parts);
        switch (what)
        {
            case "gone":
                File.Delete(Parts);
                return;
            case "of another store":
                using (var other = new TestFolder())
                {
                    other.Open(() => A.Seed(parts: 3)).Dispose();
                    File.Copy(other.In("partsmatch.parts"), Parts, overwrite: true);
                }

                return;
            case "a bit turned":
                whole[whole.Length / 2] ^= 4;
                break;
            case "of another format":
                whole[24] ^= 1;
                break;
        }

        File.WriteAllBytes(Parts, what switch
        {
            "empty" => [],
            "cut short" => whole[..(whole.Length / 2)],
            _ => whole,
        });
    }
}
