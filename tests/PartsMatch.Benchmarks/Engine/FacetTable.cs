using System.Runtime.InteropServices;
using PartsMatch.Benchmarks.Parts;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Benchmarks.Engine;

/// <summary>What the peers see of a catalogue: of every row the code of its facet an aspect, and what it is sorted by.</summary>
internal sealed class FacetTable
{
    private readonly List<object>[] facets;

    private FacetTable(Family family, int rows)
    {
        Family = family;
        facets = [.. family.Aspects.Select(_ => new List<object>())];
        Codes = [.. family.Aspects.Select(_ => new int[rows])];
        (Supply, Cents) = (new byte[rows], new int[rows]);
    }

    public Family Family { get; }

    public int Rows => Supply.Length;

    /// <summary>By aspect, then row.</summary>
    public int[][] Codes { get; }

    /// <summary>0 at hand, 1 to order, 2 no more.</summary>
    public byte[] Supply { get; }

    /// <summary>Price in cents; unknown sorts last.</summary>
    public int[] Cents { get; }

    /// <summary>By aspect, then code: the distinct facets.</summary>
    public IReadOnlyList<IReadOnlyList<object>> Facets => facets;

    /// <summary>Deduces and reads every part on all cores, then codes row by row, so that codes are the same every time.</summary>
    public static FacetTable Of(ManyParts parts)
    {
        var (family, table) = (parts.Family, new FacetTable(parts.Family, parts.Count));
        var codeOf = table.facets.Select(_ => new Dictionary<object, int>()).ToArray();
        var read = ParallelEnumerable.Range(0, parts.Count).AsOrdered().Select(row =>
        {
            var part = parts.PartAt(row);
            var deduced = family.Deduce(part.Spec).Spec;
            return (part.IsMade, Stock: parts.StockAt(row), Facets: family.Aspects.Select(aspect => aspect.FacetOf(deduced)).ToArray());
        });

        var row = 0;
        foreach (var (isMade, stock, facetOf) in read)
        {
            for (var aspect = 0; aspect < facetOf.Length; aspect++)
            {
                ref var code = ref CollectionsMarshal.GetValueRefOrAddDefault(codeOf[aspect], facetOf[aspect], out var isKnown);
                if (!isKnown)
                {
                    code = table.facets[aspect].Count;
                    table.facets[aspect].Add(facetOf[aspect]);
                }

                table.Codes[aspect][row] = code;
            }

            table.Supply[row] = (byte)(stock.OnHand > 0 ? 0 : isMade ? 1 : 2);
            table.Cents[row++] = stock.Price is { } price ? (int)(price * 100) : int.MaxValue;
        }

        return table;
    }
}
