using System.Globalization;
using PartsMatch.Store.Filed;

namespace PartsMatch.Store;

/// <summary>The mark that a store left in order leaves behind: as long as the files are as it says, the next opening need not read every document to find damage.</summary>
/// <remarks>It is taken away as soon as the store is opened. Whoever is killed leaves none, and a back-up that was put in the file's place is another length or time.</remarks>
internal static class CleanEnd
{
    /// <summary>The parts file, when it and the data file are as they were left; null when anything is different, or there is no mark.</summary>
    public static PartsFile? Find(StoreFolder folder)
    {
        try
        {
            if (!File.Exists(folder.Mark) || (File.Exists(folder.Log) && new FileInfo(folder.Log).Length > 0)) return null;
            return PartsFile.Open(folder.Parts) is { } parts && File.ReadAllText(folder.Mark) == Words(folder, parts.Digest) ? parts : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    public static void TakeAway(StoreFolder folder) => File.Delete(folder.Mark);

    /// <summary>Leaves the mark; without it, which a full disk may bring about, the next opening takes longer.</summary>
    /// <param name="folder">Whose data file was closed.</param>
    /// <param name="digest">Of the parts file that says the same as it.</param>
    public static void Leave(StoreFolder folder, long digest)
    {
        try
        {
            File.WriteAllText(folder.Mark, Words(folder, digest));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Said above.
        }
    }

    private static string Words(StoreFolder folder, long digest)
    {
        var data = new FileInfo(folder.Data);
        return string.Create(CultureInfo.InvariantCulture, $"{data.Length} bytes\nwritten {data.LastWriteTimeUtc.Ticks}\nparts {digest:x16}\n");
    }
}
