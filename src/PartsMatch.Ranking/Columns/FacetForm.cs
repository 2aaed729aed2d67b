using System.Collections.Concurrent;
using System.Runtime.InteropServices;

namespace PartsMatch.Ranking.Columns;

/// <summary>How the facets of one type are written as bytes: equal ones alike, and what is read back is equal.</summary>
internal abstract class FacetForm
{
    private static readonly ConcurrentDictionary<Type, FacetForm> Known = [];

    private protected FacetForm()
    {
    }

    /// <summary>The form of a type: of plain numbers, truths, letters and enums, nullable ones, sequences, and records of such.</summary>
    /// <exception cref="NotSupportedException">It holds something else.</exception>
    public static FacetForm Of(Type facet) => Known.GetOrAdd(facet, ValueForms.Make);

    /// <summary>Writes a facet.</summary>
    public abstract void Write(BinaryWriter to, object facet);

    /// <summary>Reads a facet from all of its bytes.</summary>
    public abstract object Read(ReadOnlyMemory<byte> facet);
}

/// <summary>How values of one type are written.</summary>
/// <typeparam name="T">The type.</typeparam>
internal abstract class ValueForm<T> : FacetForm
{
    /// <summary>Writes a value.</summary>
    public abstract void Write(BinaryWriter to, T value);

    /// <summary>Reads a value.</summary>
    public abstract T Read(BinaryReader from);

    /// <inheritdoc/>
    public sealed override void Write(BinaryWriter to, object facet) => Write(to, (T)facet);

    /// <inheritdoc/>
    public sealed override object Read(ReadOnlyMemory<byte> facet)
    {
        MemoryMarshal.TryGetArray(facet, out var bytes);
        using var from = new BinaryReader(new MemoryStream(bytes.Array!, bytes.Offset, bytes.Count, writable: false));
        return Read(from)!;
    }
}
