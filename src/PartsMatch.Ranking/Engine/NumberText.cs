using System.Runtime.InteropServices;

namespace PartsMatch.Ranking.Engine;

/// <summary>A part's number as it lies in a column: it is only made a text when it is shown.</summary>
/// <remarks>As in UTF-8, but every UTF-16 unit stands by itself in one to three bytes: any text comes back as it was, and bytes sort as texts do, unit by unit.</remarks>
/// <param name="Bytes">Its bytes.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct NumberText(ReadOnlyMemory<byte> Bytes)
{
    /// <summary>The bytes of a number.</summary>
    public static NumberText Of(string number)
    {
        var (bytes, count) = (new byte[3 * number.Length], 0);
        foreach (var unit in number)
        {
            if (unit < 0x80)
            {
                bytes[count++] = (byte)unit;
                continue;
            }

            if (unit >= 0x800) bytes[count++] = (byte)(0xE0 | (unit >> 12));
            bytes[count++] = (byte)(unit < 0x800 ? 0xC0 | (unit >> 6) : 0x80 | ((unit >> 6) & 0x3F));
            bytes[count++] = (byte)(0x80 | (unit & 0x3F));
        }

        return new(bytes.AsMemory(0, count));
    }

    /// <summary>Orders as <see cref="string.CompareOrdinal(string, string)"/> orders the texts.</summary>
    public static int Compare(NumberText one, NumberText other) => one.Bytes.Span.SequenceCompareTo(other.Bytes.Span);

    /// <inheritdoc/>
    public override string ToString()
    {
        var bytes = Bytes.Span;
        var (units, count) = (new char[bytes.Length], 0);
        foreach (var one in bytes)
        {
            if ((one & 0xC0) == 0x80) units[count - 1] = (char)((units[count - 1] << 6) | (one & 0x3F));
            else units[count++] = (char)(one < 0x80 ? one : one & (one < 0xE0 ? 0x1F : 0x0F));
        }

        return new(units, 0, count);
    }
}
