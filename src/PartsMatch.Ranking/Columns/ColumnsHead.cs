using System.Reflection;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Columns;

/// <summary>What columns tell of themselves before the first of them: whose they are, and how long each is.</summary>
/// <param name="Kind">The family's kind.</param>
/// <param name="Code">Its aspects, and the code that read their facets.</param>
/// <param name="Figures">The lengths of all columns, and all single figures, in the order in which they are written.</param>
internal sealed record ColumnsHead(string Kind, string Code, IReadOnlyList<long> Figures)
{
    /// <summary>The head of a family's columns, as this code writes it.</summary>
    public static ColumnsHead Of(Family family, IReadOnlyList<long> figures)
    {
        var aspects = family.Aspects.Select(aspect => $"{aspect.GetType().FullName} {aspect.FacetType.FullName}");

        // A compiler gives every module that it makes from other sources another id. What values are worth in other units is a library's code; how numbers are rounded, and lie in memory, the runtime's.
        Assembly[] readers =
        [
            typeof(ColumnsHead).Assembly,
            typeof(Family).Assembly,
            typeof(double).Assembly,
            .. family.Aspects.Select(aspect => aspect.GetType().Assembly),
            .. family.SpecShape.Fields.Select(field => field.Form.ValueType.Assembly),
        ];
        var modules = readers.Distinct().Select(reader => $"{reader.GetName().Name} {reader.ManifestModule.ModuleVersionId}");
        return new(family.Kind, string.Join('\n', [.. aspects, .. modules]), figures);
    }

    /// <summary>The head as bytes.</summary>
    public byte[] ToBytes()
    {
        using var bytes = new MemoryStream();
        using var to = new BinaryWriter(bytes);
        to.Write(Kind);
        to.Write(Code);
        to.Write(Figures.Count);
        foreach (var figure in Figures) to.Write(figure);
        return bytes.ToArray();
    }

    /// <summary>The head that was written as these bytes.</summary>
    public static ColumnsHead OfBytes(byte[] bytes)
    {
        using var from = new BinaryReader(new MemoryStream(bytes));
        var (kind, code, figures) = (from.ReadString(), from.ReadString(), new long[from.ReadInt32()]);
        foreach (ref var figure in figures.AsSpan()) figure = from.ReadInt64();
        return new(kind, code, figures);
    }
}
