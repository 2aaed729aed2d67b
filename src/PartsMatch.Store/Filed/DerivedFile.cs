using System.Security.Cryptography;

namespace PartsMatch.Store.Filed;

/// <summary>A file in the making that is derived from the store: it is digested as it is written, and a disk that is full is told as the store's failure, apart from all that may be wrong with what is read.</summary>
internal sealed class DerivedFile : Stream
{
    private const int BufferBytes = 1 << 20;

    private readonly FileStream _file;
    private readonly IncrementalHash _digest = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);

    public DerivedFile(string path) => _file = Failing(() => new FileStream(path, FileMode.Create, FileAccess.Write, FileShare.None, BufferBytes));

    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => _file.Length;

    public override long Position
    {
        get => _file.Position;
        set => throw new NotSupportedException();
    }

    /// <summary>Gives a whole file its name, on the disk.</summary>
    /// <exception cref="StoreFailedException">It cannot be renamed.</exception>
    public static void Rename(string making, string path) => Failing(() =>
    {
        File.Move(making, path, overwrite: true);
        return path;
    });

    /// <summary>What is left of a file that did not become whole; where it cannot be removed, the next one overwrites it.</summary>
    public static void Remove(string making)
    {
        try
        {
            File.Delete(making);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Said above.
        }
    }

    /// <summary>The digest of all that was written, as the file's end; it is on the disk then.</summary>
    public void WriteDigest() => Failing(() =>
    {
        _file.Write(_digest.GetHashAndReset());
        _file.Flush(flushToDisk: true);
        return _file;
    });

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        _digest.AppendData(buffer);
        try
        {
            _file.Write(buffer);
        }
        catch (IOException e)
        {
            throw Failed(e);
        }
    }

    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    public override void Flush()
    {
        // WriteDigest does, once.
    }

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            _digest.Dispose();
            Failing(() =>
            {
                _file.Dispose();
                return _file;
            });
        }

        base.Dispose(disposing);
    }

    private static T Failing<T>(Func<T> written)
    {
        try
        {
            return written();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw Failed(e);
        }
    }

    private static StoreFailedException Failed(Exception cause) => new("What is derived from the store cannot be written beside it.", cause);
}
