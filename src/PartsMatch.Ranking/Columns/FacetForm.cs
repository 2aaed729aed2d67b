using System.Collections.Concurrent;
using System.Runtime.InteropServices;

namespace PartsMatch.Ranking.Columns;

/// <summary>How the facets of one type are written as bytes: equal ones alike, and what is read back is equal.</summary>
/// <remarks>Values go through as objects, which is what they are kept as. A form that is generic over its values the runtime compiles anew for each of some hundred types, and a start waits for that.</remarks>
internal abstract class FacetForm
{
    private static readonly ConcurrentDictionary<Type, FacetForm> Known = [];

    private protected FacetForm()
    {
    }

    /// <summary>The form of a type: of plain numbers, truths, letters and enums, nullable ones, sequences, and records of such.</summary>
    /// <exception cref="NotSupportedException">It holds something else.</exception>
    public static FacetForm Of(Type facet) => Known.GetOrAdd(facet, FacetForms.Make);

    /// <summary>Writes a value.</summary>
    public abstract void Write(BinaryWriter to, object? value);

    /// <summary>Reads a value.</summary>
    public abstract object? Read(BinaryReader from);

    /// <summary>Reads a facet from all of its bytes.</summary>
    public object ReadWhole(ReadOnlyMemory<byte> facet)
    {
        MemoryMarshal.TryGetArray(facet, out var bytes);
        using var from = new BinaryReader(new MemoryStream(bytes.Array!, bytes.Offset, bytes.Count, writable: false));
        return Read(from)!;
    }
}
