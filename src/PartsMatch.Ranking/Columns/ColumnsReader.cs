using System.Buffers.Binary;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Security.Cryptography;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Columns;

/// <summary>Reads what a <see cref="ColumnsWriter"/> wrote, in the same order. No length is believed before the head's hash has proved it, and nothing is to be used before <see cref="IsWhole"/>.</summary>
internal sealed class ColumnsReader : IDisposable
{
    /// <summary>Longer heads are not written: that of ten million parts takes a fiftieth of it.</summary>
    private const int LongestHead = 1 << 24;

    private readonly IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
    private readonly Stream from;
    private readonly Queue<long> figures = [];
    private bool isCut;

    /// <summary>Reads the head.</summary>
    /// <param name="from">Stands at the first byte.</param>
    /// <param name="family">Whose columns are wanted.</param>
    public ColumnsReader(Stream from, Family family)
    {
        this.from = from;
        Refusal = ReadHead(family);
    }

    /// <summary>Why the columns are not to be read; null when they are.</summary>
    public ColumnsRefusal? Refusal { get; private set; }

    /// <summary>The next single figure.</summary>
    public long NextFigure() => figures.Dequeue();

    /// <summary>The next column; one of zeros when the bytes have ended before.</summary>
    public T[] Next<T>()
        where T : unmanaged
    {
        var column = new T[figures.Dequeue()];
        var piece = ColumnsWriter.Piece / Unsafe.SizeOf<T>();
        for (var rest = column.AsSpan(); rest.Length > 0; rest = rest[Math.Min(piece, rest.Length)..]) Fill(MemoryMarshal.AsBytes(rest[..Math.Min(piece, rest.Length)]));
        return column;
    }

    /// <summary>Whether all that was read is what was written, and nothing follows.</summary>
    public bool IsWhole()
    {
        if (!IsProved() || from.ReadByte() >= 0) Refusal = ColumnsRefusal.Damaged;
        return Refusal is null;
    }

    /// <inheritdoc/>
    public void Dispose() => hash.Dispose();

    private ColumnsRefusal? ReadHead(Family family)
    {
        var mark = new byte[ColumnsWriter.Mark.Length];
        Fill(mark);
        if (!mark.AsSpan().SequenceEqual(ColumnsWriter.Mark)) return ColumnsRefusal.NotColumns;
        var lengths = new byte[2 * sizeof(int)];
        Fill(lengths);
        if (BinaryPrimitives.ReadInt32LittleEndian(lengths) != ColumnsWriter.Version) return ColumnsRefusal.OtherVersion;
        var length = BinaryPrimitives.ReadInt32LittleEndian(lengths.AsSpan(sizeof(int)));
        if (length is < 0 or > LongestHead) return ColumnsRefusal.Damaged;
        var bytes = new byte[length];
        Fill(bytes);
        if (!IsProved()) return ColumnsRefusal.Damaged;
        var (head, own) = (ColumnsHead.OfBytes(bytes), ColumnsHead.Of(family, []));
        foreach (var figure in head.Figures) figures.Enqueue(figure);
        return head.Kind != own.Kind ? ColumnsRefusal.OtherKind : head.Code != own.Code ? ColumnsRefusal.OtherCode : null;
    }

    private bool IsProved()
    {
        var (expected, written) = (hash.GetCurrentHash(), new byte[SHA256.HashSizeInBytes]);
        isCut |= from.ReadAtLeast(written, written.Length, throwOnEndOfStream: false) < written.Length;
        return !isCut && written.AsSpan().SequenceEqual(expected);
    }

    private void Fill(Span<byte> bytes)
    {
        isCut |= from.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false) < bytes.Length;
        hash.AppendData(bytes);
    }
}
