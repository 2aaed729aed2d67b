namespace PartsMatch.Store;

/// <summary>Where the store lives: one folder, one file in it.</summary>
public sealed record StoreOptions(string Folder)
{
    /// <summary>The user's own: ~/.local/share/partsmatch on Linux, %LOCALAPPDATA%\partsmatch on Windows.</summary>
    public static string DefaultFolder() => Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify), "partsmatch");
}

/// <summary>The files of a folder.</summary>
internal sealed class StoreFolder(string folder)
{
    public string Path { get; } = System.IO.Path.GetFullPath(folder);

    public string Data => In("partsmatch.db");

    /// <summary>What is committed but not yet in the data file. Named as LiteDB's own tools expect it; empty between two groups of writes.</summary>
    public string Log => In("partsmatch-log.db");

    /// <summary>A store in the making; it gets its name when it is whole.</summary>
    public string Making => In("partsmatch.db.new");

    /// <summary>Every part as of some revision, derived from the data file: it may be removed while no PartsMatch runs, and is made anew.</summary>
    public string Parts => In("partsmatch.parts");

    /// <summary>Says that the store was left in order, and how.</summary>
    public string Mark => In("partsmatch.end");

    /// <summary>Readable by anyone: which process has the folder, and its address.</summary>
    public string Lock => In("partsmatch.lock");

    /// <summary>Always empty; held open exclusively for as long as the process lives.</summary>
    public string Hold => In("partsmatch.hold");

    private string In(string name) => System.IO.Path.Combine(Path, name);
}
