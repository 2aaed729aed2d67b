using System.Buffers.Binary;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Security.Cryptography;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Columns;

/// <summary>Writes columns: a head that tells how long each is, and a hash of it; then the columns as they lie in memory, and a hash of them.</summary>
/// <remarks>What is added is only gone through when it is written: it must not change until then.</remarks>
internal sealed class ColumnsWriter
{
    /// <summary>What columns begin with.</summary>
    public static ReadOnlySpan<byte> Mark => "PartsMatch columns\n"u8;

    /// <summary>Of the way in which they are written.</summary>
    public const int Version = 1;

    /// <summary>So much is written or read at a time, in bytes: what was just hashed is still near.</summary>
    public const int Piece = 1 << 20;

    private readonly List<long> figures = [];
    private readonly List<Action<Action<ReadOnlySpan<byte>>>> columns = [];

    /// <summary>Adds a single figure.</summary>
    public void Add(long figure) => figures.Add(figure);

    /// <summary>Adds a column.</summary>
    public void Add<T>(ReadOnlyMemory<T> column)
        where T : unmanaged
    {
        figures.Add(column.Length);
        columns.Add(write =>
        {
            var piece = Piece / Unsafe.SizeOf<T>();
            for (var rest = column.Span; rest.Length > 0; rest = rest[Math.Min(piece, rest.Length)..]) write(MemoryMarshal.AsBytes(rest[..Math.Min(piece, rest.Length)]));
        });
    }

    /// <summary>Writes all that was added.</summary>
    public void WriteTo(Stream to, Family family)
    {
        var head = ColumnsHead.Of(family, figures).ToBytes();
        var lengths = new byte[2 * sizeof(int)];
        BinaryPrimitives.WriteInt32LittleEndian(lengths, Version);
        BinaryPrimitives.WriteInt32LittleEndian(lengths.AsSpan(sizeof(int)), head.Length);
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Write(Mark);
        Write(lengths);
        Write(head);
        to.Write(hash.GetCurrentHash());
        foreach (var column in columns) column(Write);
        to.Write(hash.GetCurrentHash());

        void Write(ReadOnlySpan<byte> bytes)
        {
            hash.AppendData(bytes);
            to.Write(bytes);
        }
    }
}
