using System.Buffers.Binary;
using System.Runtime.InteropServices;

namespace PartsMatch.Ranking.Engine;

/// <summary>Where a code stands within a row: in as few bytes as the facets of its question need, the lowest first, since most questions have hardly any.</summary>
/// <param name="At">The first of its bytes.</param>
/// <param name="Bytes">How many bytes, 1 to 4.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct CodeSlot(int At, int Bytes)
{
    /// <summary>So many bytes are read at once, whatever a code takes.</summary>
    public const int ReadAtOnce = sizeof(uint);

    /// <summary>How many bytes the codes of so many facets take.</summary>
    public static int BytesFor(int facets) => facets switch
    {
        <= 1 << 8 => 1,
        <= 1 << 16 => 2,
        <= 1 << 24 => 3,
        _ => 4,
    };

    /// <summary>The code.</summary>
    /// <param name="from">A row's bytes from <see cref="At"/> on, and as many of the next ones as make <see cref="ReadAtOnce"/>.</param>
    public int Read(ReadOnlySpan<byte> from) => (int)(BinaryPrimitives.ReadUInt32LittleEndian(from) & (uint.MaxValue >> (32 - (8 * Bytes))));
}
