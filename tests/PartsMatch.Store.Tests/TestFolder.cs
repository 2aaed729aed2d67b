namespace PartsMatch.Store.Tests;

/// <summary>A folder of a test's own, gone afterwards.</summary>
public sealed class TestFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("partsmatch-store-").FullName;

    public string Data => In("partsmatch.db");

    public string In(string name) => System.IO.Path.Combine(Path, name);

    public PartStore Open(Func<SeedData>? seed = null, TimeProvider? clock = null) =>
        PartStore.Open(new StoreOptions(Path), clock ?? TimeProvider.System, seed);

    public StoreRefusedException Refusal() => Should.Throw<StoreRefusedException>(() => Open());

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
