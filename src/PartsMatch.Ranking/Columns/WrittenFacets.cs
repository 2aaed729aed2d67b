using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Columns;

/// <summary>The facets of a part as bytes, in the order of the family's aspects.</summary>
/// <param name="block">All of them, one behind the other.</param>
/// <param name="ends">Where each ends.</param>
internal sealed class WrittenFacets(byte[] block, int[] ends)
{
    /// <summary>The facet that an aspect reads.</summary>
    public ReadOnlySpan<byte> this[int aspect] => block.AsSpan()[(aspect == 0 ? 0 : ends[aspect - 1])..ends[aspect]];

    /// <summary>What a part has, with what follows from its spec; of one that is not offered nothing is read.</summary>
    public static WrittenFacets Of(Family family, CataloguePart part)
    {
        if (!part.IsOffered) return new([], []);
        var deduced = family.Deduce(part.Spec).Spec;
        using var bytes = new MemoryStream();
        using var to = new BinaryWriter(bytes);
        var ends = new int[family.Aspects.Count];
        foreach (var (index, aspect) in family.Aspects.Index())
        {
            FacetForm.Of(aspect.FacetType).Write(to, aspect.FacetOf(deduced));
            ends[index] = (int)bytes.Position;
        }

        return new(bytes.ToArray(), ends);
    }
}
