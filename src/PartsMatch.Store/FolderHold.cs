namespace PartsMatch.Store;

/// <summary>One process owns a folder: LiteDB in two processes loses documents without a word.</summary>
/// <remarks>
/// Two files, because on Linux an exclusively opened file cannot be read by another .NET process, and the address must be.
/// The hold is the operating system's (FileShare.None, flock on Linux): it ends with the process, even a killed one, so
/// a lock file left behind blocks nobody. The hold file is never deleted: a second process could hold the deleted one
/// while a third makes it anew.
/// </remarks>
internal sealed class FolderHold : IDisposable
{
    // WhoHolds takes the hold for an instant to see whether it is free; an opener that meets it there tries again.
    private const int Tries = 5;
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(50);

    private readonly StoreFolder _folder;
    private readonly FileStream _held;

    private FolderHold(StoreFolder folder, FileStream held)
    {
        _folder = folder;
        _held = held;
    }

    /// <exception cref="StoreRefusedException">Another process has the folder, or it cannot be written.</exception>
    public static FolderHold Take(StoreFolder folder)
    {
        try
        {
            Directory.CreateDirectory(folder.Path);
            for (var tried = 1; tried <= Tries; tried++)
            {
                if (TryHold(folder, FileMode.OpenOrCreate) is { } held)
                    return Announced(new FolderHold(folder, held));
                Thread.Sleep(Pause);
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new StoreRefusedException(
                RefusalReason.NotWritable,
                $"The data folder {folder.Path} cannot be made or written by this user. Give it the right to, or name another folder with --data.",
                e);
        }

        var holder = RunningStore.ReadFrom(folder.Lock);
        throw new StoreRefusedException(
            RefusalReason.InUse,
            $"The data folder {folder.Path} is in use by another PartsMatch ({holder}). Stop it, or give this one another folder with --data.",
            holder: holder);
    }

    /// <summary>Who has the folder now, or null when nobody has, whatever a killed process may have left there.</summary>
    public static RunningStore? WhoHolds(StoreFolder folder)
    {
        // A store that was closed in order took its lock file along: no need to touch the hold.
        if (!File.Exists(folder.Lock) || !File.Exists(folder.Hold))
            return null;
        try
        {
            using var free = TryHold(folder, FileMode.Open);
            return free is null ? RunningStore.ReadFrom(folder.Lock) : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Not ours to look at: opening the store says so in full.
            return null;
        }
    }

    public void Announce(string? address) => new RunningStore(Environment.ProcessId, address).WriteTo(_folder.Lock);

    public void Dispose()
    {
        try
        {
            File.Delete(_folder.Lock);
        }
        finally
        {
            _held.Dispose();
        }
    }

    private static FolderHold Announced(FolderHold hold)
    {
        try
        {
            hold.Announce(address: null);
            return hold;
        }
        catch
        {
            hold.Dispose();
            throw;
        }
    }

    private static FileStream? TryHold(StoreFolder folder, FileMode mode)
    {
        try
        {
            return new FileStream(folder.Hold, mode, FileAccess.ReadWrite, FileShare.None, bufferSize: 0);
        }
        catch (IOException e) when (StoreFile.IsHeldElsewhere(e))
        {
            return null;
        }
    }
}
