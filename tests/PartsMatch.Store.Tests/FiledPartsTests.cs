namespace PartsMatch.Store.Tests;

/// <summary>Whether a part lies in the file or was written since, the catalogue says the same of it.</summary>
public sealed class FiledPartsTests : IDisposable
{
    private const int Steps = 400;
    private const int Numbers = 120;

    private static readonly string[] Kinds = ["motor", "capacitor", "none that is known"];

    private readonly TestFolder _folder = new();
    private readonly SortedDictionary<string, StoredPart> _parts = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, StockLine> _stock = new(StringComparer.Ordinal);

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public async Task Random_writes_filings_and_restarts_leave_what_was_written(int seed)
    {
        var random = new Random(seed);
        var store = Open();
        try
        {
            for (var step = 0; step < Steps; step++)
            {
                await StepAsync(store, random);
                if (random.Next(40) == 0) await store.FileAsync();
                if (random.Next(80) == 0)
                {
                    store.Dispose();
                    store = Open();
                }

                if (step % 10 == 0) ShouldSayAll(store, random);
            }

            ShouldSayAll(store, random);
        }
        finally
        {
            store.Dispose();
        }
    }

    [Fact]
    public async Task What_lies_written_beside_the_file_is_filed_in_the_background()
    {
        using var store = PartStore.Open(new(_folder.Path) { FewUnfiled = 20 }, TimeProvider.System);
        var filed = new TaskCompletionSource();
        store.Changed += (_, change) =>
        {
            if (change.Parts.Count + change.Stock.Count == 0) filed.TrySetResult();
        };
        for (var part = 0; part < 40; part++) await store.AddAsync(A.Motor($"N-{part}"), "the counter");
        await filed.Task.WaitAsync(TimeSpan.FromMinutes(1), TestContext.Current.CancellationToken);
        store.Parts.Count().ShouldBe(40);
    }

    [Fact]
    public async Task A_text_that_is_longer_than_any_number_is_no_parts()
    {
        using var store = _folder.Open(() => A.Seed(parts: 40));
        store.Find(new string('Z', 4_000_000)).ShouldBeNull();
        await store.AddAsync(A.Motor(new string('Ö', PartNumber.MostCharacters)), "the counter");
        await store.FileAsync();
        store.Find(new string('ö', PartNumber.MostCharacters)).ShouldNotBeNull();
    }

    [Fact]
    public async Task A_catalogue_taken_before_a_filing_reads_on_from_the_file_it_knew()
    {
        using var store = _folder.Open(() => A.Seed(parts: 200));
        var before = store.Catalogue;
        await store.ChangeAsync("DEMO-150", 1, A.Motor("DEMO-150", "another title"), "the counter");
        await store.FileAsync();
        await store.RetireAsync("DEMO-150", 2, "the counter");
        await store.FileAsync();
        before.Find("DEMO-150")!.Title.ShouldBe("1/4 hp condenser fan motor");
        before.Parts.Count().ShouldBe(200);
        store.Find("DEMO-150")!.Status.ShouldBe(PartStatus.Retired);
    }

    [Fact]
    public async Task Who_follows_the_catalogue_is_handed_the_filed_one()
    {
        using var store = _folder.Open(() => A.Seed());
        var told = new List<CatalogueSnapshot>();
        store.Changed += (_, change) => told.Add(change.After);
        await store.AddAsync(A.Motor(), "the counter");
        told[^1].Digest.ShouldBeNull();
        await store.FileAsync();
        told[^1].Digest.ShouldNotBeNull();
        told[^1].Find("QX-1048").ShouldNotBeNull();
    }

    /// <summary>Filing goes on in the background all the time.</summary>
    private PartStore Open() => PartStore.Open(new(_folder.Path) { FewUnfiled = 15 }, TimeProvider.System);

    private async Task StepAsync(PartStore store, Random random)
    {
        var number = Number(random);
        var present = _parts.GetValueOrDefault(PartNumber.Key(number));
        var draft = Draft(number, random);
        switch (random.Next(4))
        {
            case 0 when present is not null:
                var line = new StockLine(number, random.Next(3) == 0 ? null : random.Next(100_000) / 1000m, random.Next(2) == 0 ? "USD" : string.Empty, random.Next(3) == 0 ? null : random.Next(-3, 3000));
                await store.SetStockAsync(line);
                _stock[PartNumber.Key(number)] = line;
                break;
            case 1 when present is { Status: not PartStatus.Retired }:
                _parts[PartNumber.Key(number)] = A.Written(await store.RetireAsync(number, present.Version, "a"));
                break;
            case 2 when present is not null:
                _parts[PartNumber.Key(number)] = A.Written(await store.ChangeAsync(number, present.Version, draft, "b"));
                break;
            default:
                var result = await store.AddAsync(draft, "c");
                if (present is null) _parts[PartNumber.Key(number)] = A.Written(result);
                else result.ShouldBeOfType<WriteResult.AlreadyThere>().Present.Version.ShouldBe(present.Version);
                break;
        }
    }

    private void ShouldSayAll(PartStore store, Random random)
    {
        var catalogue = store.Catalogue;
        catalogue.Count.ShouldBe(_parts.Count);
        catalogue.Parts.ShouldBe(_parts.Values, new SamePart());
        catalogue.AllStock.ShouldBe(_stock.Select(one => Spelt(one.Key)));
        var kind = Kinds[random.Next(Kinds.Length)];
        var after = random.Next(3) == 0 ? null : PartNumber.Key(Number(random));
        catalogue.Kept(kind, after).Select(kept => (kept.Part.Number, kept.Part.Version, kept.Stock)).ShouldBe(_parts
            .Where(one => one.Value.Kind == kind && (after is null || string.CompareOrdinal(one.Key, after) > 0))
            .Select(one => (one.Value.Number, one.Value.Version, Spelt(one.Key))));
        var number = Number(random);
        catalogue.Find(number).ShouldBe(_parts.GetValueOrDefault(PartNumber.Key(number)), new SamePart());
        catalogue.Stock(number).ShouldBe(Spelt(PartNumber.Key(number)));
        catalogue.ReplacedBy(number).Select(kept => kept.Part.Number).ShouldBe(
            _parts.Values.Where(part => part.SupersededBy.Any(by => PartNumber.Key(by.Number) == PartNumber.Key(number))).Select(part => part.Number));
    }

    /// <summary>A line has its part's number as that is spelt now.</summary>
    private StockLine? Spelt(string key) => _stock.GetValueOrDefault(key) is { } line ? line with { Number = _parts[key].Number } : null;

    private static string Number(Random random) => FormattableString.Invariant($"Ö{random.Next(Numbers)}{(random.Next(2) == 0 ? "-x" : " X")}");

    private static PartDraft Draft(string number, Random random) => new(
        number,
        Kinds[random.Next(Kinds.Length)],
        $"maker {random.Next(4)}",
        random.Next(5) == 0 ? string.Empty : $"title 𝄞 {random.Next()}",
        (PartStatus)random.Next(2),
        [.. Enumerable.Range(0, random.Next(6)).Select(at => new NamedText($"field {at}", random.Next(4) == 0 ? string.Empty : $"text {random.Next(300)}"))],
        [.. Enumerable.Range(0, random.Next(3)).Select(_ => new Supersession(Number(random), $"maker {random.Next(4)}", new DateOnly(2020, 1, 1).AddDays(random.Next(2000))))]);

    /// <summary>Records that hold lists are equal when these are.</summary>
    private sealed class SamePart : IEqualityComparer<StoredPart?>
    {
        public bool Equals(StoredPart? one, StoredPart? other) => one is null || other is null ? one is null && other is null : Same(one, other);

        public int GetHashCode(StoredPart? part) => 0;

        private static bool Same(StoredPart one, StoredPart other) =>
            (one.Number, one.Kind, one.Maker, one.Title, one.Status, one.Version) == (other.Number, other.Kind, other.Maker, other.Title, other.Status, other.Version)
            && one.Spec.SequenceEqual(other.Spec) && one.SupersededBy.SequenceEqual(other.SupersededBy);
    }
}
