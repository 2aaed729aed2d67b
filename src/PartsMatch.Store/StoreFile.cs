namespace PartsMatch.Store;

/// <summary>A file as LiteDB gets it from us: nobody else can open it meanwhile, and a flush means the disk, not the system's cache.</summary>
/// <remarks>LiteDB wraps a stream it is handed and then flushes it only as far as the operating system, where a power cut still loses it.</remarks>
internal sealed class StoreFile(string path, FileMode mode) : FileStream(path, mode, FileAccess.ReadWrite, FileShare.None, bufferSize: 0)
{
    // EAGAIN on Linux, EWOULDBLOCK on macOS, ERROR_SHARING_VIOLATION on Windows.
    private static readonly int[] SharingErrors = [11, 35, unchecked((int)0x80070020)];

    public static bool IsHeldElsewhere(IOException e) => SharingErrors.Contains(e.HResult);

    public override void Flush() => Flush(flushToDisk: true);
}

/// <summary>A file that is only looked at. LiteDB crops a half-written last page when it opens a file, even one to read only: here it may believe it has.</summary>
internal sealed class UntouchedFile(string path) : FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 0)
{
    public override void SetLength(long value)
    {
        // Nothing: see above.
    }
}
