using System.Security.Cryptography;
using LiteDB;

namespace PartsMatch.Store.Tests;

public sealed class RefusalTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("nothing")]
    [InlineData("a sentence")]
    [InlineData("a page of zeros")]
    [InlineData("ten pages of noise")]
    [InlineData("ten pages and a bit of noise")]
    [InlineData("an encrypted file's first byte")]
    [InlineData("half of a store")]
    [InlineData("half of a store beside a log")]
    [InlineData("a store without its last 100 bytes")]
    [InlineData("a store without its last page")]
    [InlineData("a store with 20 pages of zeros amid it")]
    [InlineData("another program's LiteDB file")]
    public void A_file_that_is_no_whole_store_is_refused_and_left_byte_for_byte(string what)
    {
        Damage(what);
        var before = Digest();

        var refusal = _folder.Refusal();

        refusal.Reason.ShouldBe(RefusalReason.Corrupt);
        refusal.Message.ShouldStartWith($"{_folder.Data} is not a whole PartsMatch store: ");
        refusal.Message.ShouldEndWith("It was left as it is. Put a back-up in its place, or give another folder with --data.");
        refusal.Message.ShouldNotContain("Exception");
        Digest().ShouldBe(before);
        PartStore.WhoHolds(_folder.Path).ShouldBeNull();
    }

    [Fact]
    public void Noise_anywhere_in_the_file_is_either_refused_and_left_as_it_is_or_read()
    {
        _folder.Open(() => A.Seed(parts: 200)).Dispose();
        var whole = File.ReadAllBytes(_folder.Data);
        var random = new Random(20260314);
        var refused = 0;
        for (var i = 0; i < 40; i++)
        {
            var damaged = (byte[])whole.Clone();
            random.NextBytes(damaged.AsSpan(random.Next(damaged.Length - 4096), 4096));
            File.WriteAllBytes(_folder.Data, damaged);
            var before = Digest();
            try
            {
                _folder.Open().Dispose();
            }
            catch (StoreRefusedException refusal)
            {
                refusal.Reason.ShouldBe(RefusalReason.Corrupt);
                Digest().ShouldBe(before);
                refused++;
            }
        }

        refused.ShouldBeGreaterThan(0);
    }

    [Fact]
    public void Damage_in_the_history_is_found_when_the_store_is_opened_not_under_a_later_write()
    {
        _folder.Open(() => A.Seed()).Dispose();
        var bytes = File.ReadAllBytes(_folder.Data);
        bytes.AsSpan(bytes.AsSpan().IndexOf("Seeded"u8), "Seeded".Length).Fill(0xFF); // no byte of any UTF-8 text
        File.WriteAllBytes(_folder.Data, bytes);
        var before = Digest();
        _folder.Refusal().Reason.ShouldBe(RefusalReason.Corrupt);
        Digest().ShouldBe(before);
    }

    [Fact]
    public void A_log_whose_data_file_is_gone_is_refused_rather_than_replayed_into_a_new_store()
    {
        File.WriteAllBytes(_folder.In("partsmatch-log.db"), new byte[8192]);
        var before = Digest();
        var refusal = _folder.Refusal();
        refusal.Reason.ShouldBe(RefusalReason.Corrupt);
        refusal.Message.ShouldContain("partsmatch-log.db is there, but the partsmatch.db it belongs to is not");
        Digest().ShouldBe(before);
    }

    [Fact]
    public void A_newer_format_is_refused_and_left_byte_for_byte()
    {
        PartStore.Open(new StoreOptions(_folder.Path), TimeProvider.System, () => A.Seed(), [.. Opening.Upgrades, _ => { }]).Dispose();
        var before = Digest();
        var refusal = _folder.Refusal();
        refusal.Reason.ShouldBe(RefusalReason.NewerFormat);
        refusal.Message.ShouldBe(
            FormattableString.Invariant($"{_folder.Data} has format {Opening.Upgrades.Count + 2}, and this PartsMatch reads formats up to {Opening.Upgrades.Count + 1}. It was left as it is. ") +
            "Start the newer PartsMatch that wrote it, or give another folder with --data.");
        Digest().ShouldBe(before);
    }

    private void Damage(string what)
    {
        var noise = new byte[81_920 + 500];
        new Random(7).NextBytes(noise);
        if (what.Contains("a store", StringComparison.Ordinal))
            _folder.Open(() => A.Seed(parts: 200)).Dispose();
        var store = File.Exists(_folder.Data) ? File.ReadAllBytes(_folder.Data) : [];
        switch (what)
        {
            case "another program's LiteDB file":
                using (var foreign = new LiteDatabase(_folder.Data))
                    foreign.GetCollection("meta").Insert(new BsonDocument { ["_id"] = "format", ["version"] = 1 });
                return;
            case "half of a store beside a log":
                File.WriteAllBytes(_folder.In("partsmatch-log.db"), new byte[8192]);
                break;
            case "a store with 20 pages of zeros amid it":
                store.AsSpan(10 * 8192, 20 * 8192).Clear();
                break;
        }

        File.WriteAllBytes(_folder.Data, what switch
        {
            "nothing" => [],
            "a sentence" => "This is no database."u8.ToArray(),
            "a page of zeros" => new byte[8192],
            "ten pages of noise" => noise[..81_920],
            "ten pages and a bit of noise" => noise,
            "an encrypted file's first byte" => [1, .. new byte[16_383]],
            "half of a store" or "half of a store beside a log" => store[..(store.Length / 2)],
            "a store without its last 100 bytes" => store[..^100],
            "a store without its last page" => store[..^8192],
            _ => store,
        });
    }

    /// <summary>Of every file but the empty hold: no bytes changed, no file made or gone.</summary>
    private string Digest() => string.Join('\n', Directory.GetFiles(_folder.Path).Order(StringComparer.Ordinal)
        .Where(file => !file.EndsWith(".hold", StringComparison.Ordinal) && !file.EndsWith(".lock", StringComparison.Ordinal))
        .Select(file => $"{Path.GetFileName(file)} {Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(file)))}"));
}
