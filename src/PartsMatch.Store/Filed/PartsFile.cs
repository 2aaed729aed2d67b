using System.Buffers;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace PartsMatch.Store.Filed;

/// <summary>What a parts file holds: as of which revision and entry of the record of changes, and how many parts.</summary>
internal sealed record PartsFileContents(long Revision, long Sequence, int Count);

/// <summary>
/// Every part as of one revision, in the order of their numbers' keys, in a file that is read piece by piece: a million parts need little memory, and no time at the start.
/// </summary>
/// <remarks>
/// It is made from the LiteDB file and never changed: what is written since stands beside it in memory (<see cref="CatalogueSnapshot"/>) until a new one takes its place. A snapshot
/// that still reads an old one keeps it open, whatever has taken its name meanwhile.
/// </remarks>
internal sealed class PartsFile : IDisposable
{
    private readonly SafeFileHandle? _file;
    private readonly PartsFileIndex _index;

    private PartsFile(SafeFileHandle? file, PartsFileIndex index, long digest) => (_file, _index, Digest) = (file, index, digest);

    /// <summary>No parts.</summary>
    public static PartsFile None { get; } = new(null, PartsFileIndex.Empty, digest: 0);

    public PartsFileContents Contents => _index.Contents;

    /// <summary>Files with the same hold the same parts at the same revision.</summary>
    public long Digest { get; }

    /// <summary>Opens a file; null when there is none that is whole and of this format.</summary>
    public static PartsFile? Open(string path)
    {
        try
        {
            // Another may take its name while this one is read.
            var file = File.OpenHandle(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            if (PartsFileFormat.Read(file) is var (index, digest)) return new(file, index, digest);
            file.Dispose();
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    public KeptPart? Find(string key)
    {
        if (_index.BlockOf(key) is not { } block) return null;
        Span<byte> wanted = stackalloc byte[Encoding.UTF8.GetMaxByteCount(key.Length)];
        wanted = wanted[..Encoding.UTF8.GetBytes(key, wanted)];
        var bytes = Bytes(block);
        try
        {
            for (var records = new RecordBytes(bytes.AsSpan(0, block.Length)); !records.IsAtEnd;)
            {
                var record = new RecordBytes(records.TextBytes());
                if (record.TextBytes().SequenceEqual(wanted)) return PartRecord.Read(ref record, _index.Texts.Word(record.Number()), _index.Texts);
            }

            return null;
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(bytes);
        }
    }

    /// <summary>Parts with their keys, in the order of these.</summary>
    /// <param name="kind">Of which kind; of all when null.</param>
    /// <param name="after">Those whose key comes after this one; all when null.</param>
    public IEnumerable<KeyValuePair<string, KeptPart>> Parts(string? kind, string? after)
    {
        var only = kind is null ? null : _index.Texts.Find(kind);
        if (kind is not null && only is null) yield break;
        foreach (var block in _index.BlocksFrom(after))
        {
            foreach (var part in PartsOf(block, only))
            {
                if (after is null || string.CompareOrdinal(part.Key, after) > 0) yield return part;
            }
        }
    }

    /// <summary>The keys of the parts that the part of a key replaced.</summary>
    public IEnumerable<string> ReplacedBy(string key) => _index.ReplacedBy(key);

    /// <summary>Only for the last of all: one that another takes the place of is closed when no snapshot reads it any more.</summary>
    public void Dispose() => _file?.Dispose();

    private List<KeyValuePair<string, KeptPart>> PartsOf(Block block, int? kind)
    {
        var (parts, bytes) = (new List<KeyValuePair<string, KeptPart>>(), Bytes(block));
        try
        {
            for (var records = new RecordBytes(bytes.AsSpan(0, block.Length)); !records.IsAtEnd;)
            {
                var record = new RecordBytes(records.TextBytes());
                var key = record.TextBytes();
                var its = record.Number();
                if (kind is null || its == kind) parts.Add(new(Encoding.UTF8.GetString(key), PartRecord.Read(ref record, _index.Texts.Word(its), _index.Texts)));
            }

            return parts;
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(bytes);
        }
    }

    private byte[] Bytes(Block block)
    {
        var bytes = ArrayPool<byte>.Shared.Rent(block.Length);
        for (var read = 0; read < block.Length;)
        {
            var more = RandomAccess.Read(_file!, bytes.AsSpan(read, block.Length - read), block.At + read);
            if (more == 0) throw new EndOfStreamException("The parts file was cut short while it was in use.");
            read += more;
        }

        return bytes;
    }
}
