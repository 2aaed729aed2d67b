using System.Buffers.Binary;

namespace PartsMatch.Store;

/// <summary>Is the file there a store that this program can take over? Found out by reading alone, so that a file that is refused stays as it is, byte for byte.</summary>
internal static class Inspection
{
    // LiteDB 5's file format: pages of 8,192 bytes; the first page holds, at byte 64, the number of the last page (little-endian).
    private const int PageBytes = 8192;
    private const int LastPageAt = 64;

    /// <param name="folder">Where it lies.</param>
    /// <param name="newestFormat">The newest format that this program knows.</param>
    /// <param name="read">Reads of it what is to be known to be whole.</param>
    /// <returns>The file's format version.</returns>
    /// <exception cref="StoreRefusedException">It is cut short, damaged, another program's, or from a later PartsMatch.</exception>
    public static int Read(StoreFolder folder, int newestFormat, Action<Database> read)
    {
        using var data = new UntouchedFile(folder.Data);
        using Stream log = File.Exists(folder.Log) ? new UntouchedFile(folder.Log) : new MemoryStream();
        if (CutShort(data, logIsEmpty: log.Length == 0) is { } complaint)
            throw Corrupt(folder, complaint, cause: null);
        try
        {
            using var database = Database.OpenToRead(data, log);
            var version = database.FormatVersion;
            if (version == 0)
                throw Corrupt(folder, "it holds another program's data", cause: null);
            if (version > newestFormat)
                throw Newer(folder, version, newestFormat);
            read(database);
            return version;
        }
        catch (Exception e) when (e is not (StoreRefusedException or StoreFailedException))
        {
            // Whatever LiteDB runs into in bytes that are not its own: it throws a dozen kinds, none of them of use to a person.
            throw Corrupt(folder, "its content is damaged or not a database at all", e);
        }
    }

    /// <summary>A log that was left behind may hold pages that are still to be copied, so a file with one may well be shorter than it says.</summary>
    private static string? CutShort(UntouchedFile data, bool logIsEmpty)
    {
        if (data.Length < PageBytes)
            return FormattableString.Invariant($"it has {data.Length} bytes, and even an empty one has {PageBytes}");
        if (!logIsEmpty)
            return null;
        Span<byte> lastPage = stackalloc byte[sizeof(uint)];
        RandomAccess.Read(data.SafeFileHandle, lastPage, LastPageAt);
        var least = (BinaryPrimitives.ReadUInt32LittleEndian(lastPage) + 1L) * PageBytes;
        return data.Length >= least && data.Length % PageBytes == 0
            ? null
            : FormattableString.Invariant($"it is cut short or not a database at all: {data.Length} bytes where its first page speaks of {least}");
    }

    private static StoreRefusedException Corrupt(StoreFolder folder, string complaint, Exception? cause) => new(
        RefusalReason.Corrupt,
        $"{folder.Data} is not a whole PartsMatch store: {complaint}. It was left as it is. Put a back-up in its place, or give another folder with --data.",
        cause);

    private static StoreRefusedException Newer(StoreFolder folder, int version, int newestFormat) => new(
        RefusalReason.NewerFormat,
        FormattableString.Invariant(
            $"{folder.Data} has format {version}, and this PartsMatch reads formats up to {newestFormat}. It was left as it is. Start the newer PartsMatch that wrote it, or give another folder with --data."));
}
