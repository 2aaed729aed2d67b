namespace PartsMatch.Ranking.Engine;

/// <summary>The distinct facets of one aspect, each with a code: it only grows, so that every snapshot that shares it may read while a new one adds.</summary>
internal sealed class FacetTable
{
    private readonly Dictionary<object, int> codes = [];
    private object[] facets = new object[16];

    /// <summary>How many distinct facets there are.</summary>
    public int Count
    {
        get
        {
            lock (codes) return codes.Count;
        }
    }

    /// <summary>The facet of a code that was given before.</summary>
    public object this[int code] => Volatile.Read(ref facets)[code];

    /// <summary>The code of a facet; a new one gets the next.</summary>
    public int CodeOf(object facet)
    {
        lock (codes)
        {
            if (codes.TryGetValue(facet, out var known)) return known;
            var code = codes.Count;
            if (code == facets.Length)
            {
                var grown = new object[2 * code];
                facets.CopyTo(grown, 0);
                Volatile.Write(ref facets, grown);
            }

            facets[code] = facet;
            codes.Add(facet, code);
            return code;
        }
    }
}
