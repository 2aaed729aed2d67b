using System.Text;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Exchange;
using PartsMatch.Service.Tests.Support;
using PartsMatch.Store;

namespace PartsMatch.Service.Tests.Exchange;

/// <summary>A small store of its own, with tables going in and out of it.</summary>
internal sealed class Importing : IDisposable
{
    private readonly TestFolder _data = new();
    private readonly TestFolder _seed = new();
    private readonly ExchangeLimits _limits;

    public Importing(SeedData? seed = null, ExchangeLimits? limits = null)
    {
        _limits = limits ?? new();
        Seed.WriteTo(_seed);
        Store = PartStore.Open(new(_data.Path), TimeProvider.System, () => seed ?? SeedCatalogue.Read(_seed.Path));
    }

    public PartStore Store { get; }

    private CatalogueImport Import => new(Store, Microsoft.Extensions.Options.Options.Create(_limits), TimeProvider.System);

    public static CatalogueTable Table(string kind) => CatalogueTable.Find(kind).ShouldNotBeNull();

    public Task<Answer<ImportReport>> TryAsync(string kind, byte[] file) => Import.PreviewAsync(Table(kind), file, progress: null, TestContext.Current.CancellationToken);

    public async Task<ImportReport> PreviewAsync(string kind, string csv) => (await TryAsync(kind, Encoding.UTF8.GetBytes(csv))).Value.ShouldNotBeNull();

    public async Task<ImportReport> TakeAsync(string kind, string csv, long? seen = null, IProgress<ImportProgress>? progress = null, CancellationToken? stop = null) =>
        (await Import.TakeAsync(Table(kind), Encoding.UTF8.GetBytes(csv), "the test", seen, progress, stop ?? TestContext.Current.CancellationToken)).Value.ShouldNotBeNull();

    public async Task<string> ExportAsync(string kind)
    {
        using var bytes = new MemoryStream();
        await CatalogueExport.WriteAsync(Table(kind), Store, bytes, TestContext.Current.CancellationToken);
        return Encoding.UTF8.GetString(bytes.ToArray());
    }

    public void Dispose()
    {
        Store.Dispose();
        _data.Dispose();
        _seed.Dispose();
    }
}
