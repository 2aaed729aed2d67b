using PartsMatch.Service.Exchange;
using PartsMatch.Store;

namespace PartsMatch.Service.Hosting;

/// <summary>Where the service keeps what it knows, and what a new store begins with.</summary>
public sealed record DataFolder(string Path, string? SeedFolder)
{
    private const string Folder = "Data:Folder";
    private const string Seed = "Data:SeedFolder";
    private const string Variable = "PARTSMATCH_DATA";

    internal static IReadOnlyList<Setting> Settings { get; } = [Setting.Words(Folder), Setting.Words(Seed), Setting.Words(Variable)];

    public static DataFolder Of(IConfiguration configuration) => new(
        Said(configuration[Folder]) ?? Said(configuration[Variable]) ?? StoreOptions.DefaultFolder(),
        Said(configuration[Seed]));

    /// <summary>The folder of the weights' files.</summary>
    public string Weights => System.IO.Path.Combine(Path, "weights");

    /// <summary>The folder of what cookies are sealed with: only the user whom the service runs as can look into it.</summary>
    public DirectoryInfo CookieKeys()
    {
        var keys = Directory.CreateDirectory(System.IO.Path.Combine(Path, "keys"));
        // Elsewhere the user's own folder is closed to others as it is.
        if (!OperatingSystem.IsWindows()) keys.UnixFileMode = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
        return keys;
    }

    /// <exception cref="StoreRefusedException">What is in the folder cannot be used.</exception>
    /// <exception cref="StartRefusedException">The store is new, and its seed cannot be read.</exception>
    public PartStore OpenStore(TimeProvider clock) => PartStore.Open(new(Path), clock, () => SeedCatalogue.Read(SeedFolder));

    private static string? Said(string? setting) => string.IsNullOrWhiteSpace(setting) ? null : setting;
}
