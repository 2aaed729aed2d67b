using System.Security.Cryptography;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace PartsMatch.Store.Filed;

/// <summary>How a parts file is laid out: a title, blocks of parts, the index, where that begins, and a digest of all of it.</summary>
internal static class PartsFileFormat
{
    /// <summary>A part is found by reading its block: few enough that this is quick, enough that the blocks' keys are few.</summary>
    private const int PartsOfABlock = 16;

    private const int DigestBytes = SHA256.HashSizeInBytes;
    private const int ReadBytes = 1 << 20;

    /// <summary>Names the format too: a file that begins otherwise is made anew.</summary>
    private static readonly byte[] Title = "PartsMatch parts, format 1\n"u8.ToArray();

    /// <summary>Writes a file under <paramref name="path"/>, whole or not at all; one that is there is replaced.</summary>
    /// <param name="path">Where.</param>
    /// <param name="parts">In ascending order of their keys.</param>
    /// <param name="asOf">Revision and last entry; asked for once the parts were taken.</param>
    /// <exception cref="StoreFailedException">It cannot be written.</exception>
    /// <exception cref="InvalidDataException">The parts are not in order.</exception>
    public static void Write(string path, IEnumerable<KeptPart> parts, Func<(long Revision, long Sequence)> asOf)
    {
        var making = path + ".new";
        try
        {
            using (var file = new DerivedFile(making))
            {
                using (var to = new BinaryWriter(file, Encoding.UTF8, leaveOpen: true))
                {
                    to.Write(Title);
                    var index = Blocks(to, parts, asOf);
                    to.Flush();
                    var indexAt = file.Position;
                    index.Write(to);
                    to.Write(indexAt);
                }

                file.WriteDigest();
            }

            DerivedFile.Rename(making, path);
        }
        catch
        {
            DerivedFile.Remove(making);
            throw;
        }
    }

    /// <summary>The index and the digest of a file that is whole and of this format; null of any other.</summary>
    public static (PartsFileIndex Index, long Digest)? Read(SafeFileHandle file)
    {
        var length = RandomAccess.GetLength(file) - DigestBytes;
        if (length < Title.Length + sizeof(long)) return null;
        var (title, digest, place) = (new byte[Title.Length], new byte[DigestBytes], new byte[sizeof(long)]);
        RandomAccess.Read(file, title, 0);
        RandomAccess.Read(file, digest, length);
        RandomAccess.Read(file, place, length - place.Length);
        if (!title.AsSpan().SequenceEqual(Title) || !DigestOf(file, length).AsSpan().SequenceEqual(digest)) return null;

        var index = new byte[length - BitConverter.ToInt64(place)];
        RandomAccess.Read(file, index, length - index.Length);
        using var from = new BinaryReader(new MemoryStream(index), Encoding.UTF8);
        return (PartsFileIndex.Read(from, Title.Length), BitConverter.ToInt64(digest));
    }

    private static PartsFileIndex Blocks(BinaryWriter to, IEnumerable<KeptPart> parts, Func<(long Revision, long Sequence)> asOf)
    {
        var texts = new TextTable();
        var (firstKeys, blocks, replaced, count) = (new List<string>(), new List<Block>(), new List<(string, string)>(), 0);
        var last = string.Empty;
        foreach (var block in parts.Chunk(PartsOfABlock))
        {
            var (bytes, record) = (new MemoryStream(), new MemoryStream());
            using var toBlock = new BinaryWriter(bytes, Encoding.UTF8);
            using var toRecord = new BinaryWriter(record, Encoding.UTF8);
            foreach (var part in block)
            {
                var key = PartNumber.Key(part.Part.Number);
                if (string.CompareOrdinal(key, last) <= 0) throw new InvalidDataException($"{key} follows {last}.");
                last = key;
                record.SetLength(0);
                PartRecord.Write(toRecord, part, texts);
                toBlock.Write7BitEncodedInt((int)record.Length);
                toBlock.Write(record.GetBuffer(), 0, (int)record.Length);
                replaced.AddRange(part.Part.SupersededBy.Select(by => (PartNumber.Key(by.Number), key)));
            }

            firstKeys.Add(PartNumber.Key(block[0].Part.Number));
            blocks.Add(new(0, (int)bytes.Length));
            to.Write(bytes.GetBuffer(), 0, (int)bytes.Length);
            count += block.Length;
        }

        var (revision, sequence) = asOf();
        return new(new(revision, sequence, count), texts, [.. firstKeys], [.. blocks], [.. replaced.Distinct().Order(PartsFileIndex.InOrder)]);
    }

    private static byte[] DigestOf(SafeFileHandle file, long length)
    {
        using var digest = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var bytes = new byte[(int)Math.Min(ReadBytes, length)];
        for (long at = 0; at < length;)
        {
            var read = RandomAccess.Read(file, bytes.AsSpan(0, (int)Math.Min(bytes.Length, length - at)), at);
            if (read == 0) break;
            digest.AppendData(bytes.AsSpan(0, read));
            at += read;
        }

        return digest.GetHashAndReset();
    }
}
