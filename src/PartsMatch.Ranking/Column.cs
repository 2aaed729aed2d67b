using System.Runtime.InteropServices;

namespace PartsMatch.Ranking;

/// <summary>One aspect's column of a catalogue: the distinct facets, and of every row which of them it carries.</summary>
/// <param name="Facets">The distinct facets, in the order in which rows first carry them.</param>
/// <param name="Codes">Of every row, the index of its facet.</param>
internal sealed record Column(IReadOnlyList<object> Facets, int[] Codes)
{
    /// <summary>Gives each facet a code; equal ones have to be the same object.</summary>
    public static Column Of(IReadOnlyCollection<object> facetOfRow)
    {
        var codeOf = new Dictionary<object, int>(ReferenceEqualityComparer.Instance);
        var facets = new List<object>();
        var codes = new int[facetOfRow.Count];
        var row = 0;
        foreach (var facet in facetOfRow)
        {
            ref var code = ref CollectionsMarshal.GetValueRefOrAddDefault(codeOf, facet, out var isKnown);
            if (!isKnown)
            {
                code = facets.Count;
                facets.Add(facet);
            }

            codes[row++] = code;
        }

        return new(facets, codes);
    }
}
