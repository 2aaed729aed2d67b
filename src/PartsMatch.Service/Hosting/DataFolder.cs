using PartsMatch.Service.Exchange;
using PartsMatch.Store;

namespace PartsMatch.Service.Hosting;

/// <summary>Where the service keeps what it knows, and what a new store begins with.</summary>
public sealed record DataFolder(string Path, string? SeedFolder)
{
    public static DataFolder Of(IConfiguration configuration) => new(
        Said(configuration["Data:Folder"]) ?? Said(configuration["PARTSMATCH_DATA"]) ?? StoreOptions.DefaultFolder(),
        Said(configuration["Data:SeedFolder"]));

    /// <summary>The folder of the weights' files.</summary>
    public string Weights => System.IO.Path.Combine(Path, "weights");

    /// <exception cref="StoreRefusedException">What is in the folder cannot be used.</exception>
    /// <exception cref="StartRefusedException">The store is new, and its seed cannot be read.</exception>
    public PartStore OpenStore(TimeProvider clock) => PartStore.Open(new(Path), clock, () => SeedCatalogue.Read(SeedFolder));

    private static string? Said(string? setting) => string.IsNullOrWhiteSpace(setting) ? null : setting;
}
