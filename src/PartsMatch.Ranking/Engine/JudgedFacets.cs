using System.Runtime.CompilerServices;

namespace PartsMatch.Ranking.Engine;

/// <summary>What one query found out about facets: a figure each, 0 for those that it has not judged.</summary>
/// <remarks>A thread uses the same room for query after query, and what was written into it is taken out again: to make the room anew took as long as a tenth of the judging.</remarks>
internal sealed class JudgedFacets : IDisposable
{
    /// <summary>So many facets of an aspect have a place each. A catalogue's common facets have the lowest codes; of those beyond, a query asks for few.</summary>
    private const int MostInRow = 1024;

    /// <summary>Room that had to hold more is not used again, so that one wild query does not hold its memory for good.</summary>
    private const int MostKept = 20_000;

    [ThreadStatic]
    private static JudgedFacets? spare;

    private readonly List<(int Aspect, int Code)> judged = [];
    private readonly Dictionary<long, long> beyond = [];
    private long[][] rows = [];

    private JudgedFacets()
    {
    }

    /// <summary>How many were judged.</summary>
    public int Count => judged.Count;

    /// <summary>Room for a catalogue's facets, of which none is judged yet.</summary>
    public static JudgedFacets None(FacetTable[] facets)
    {
        var none = spare ?? new();
        spare = null;
        if (none.rows.Length < facets.Length) none.rows = [.. none.rows, .. Enumerable.Repeat<long[]>([], facets.Length - none.rows.Length)];
        for (var aspect = 0; aspect < facets.Length; aspect++)
        {
            var places = Math.Min(facets[aspect].Count, MostInRow);
            if (none.rows[aspect].Length < places) none.rows[aspect] = new long[places];
        }

        return none;
    }

    /// <summary>The figure of a facet; 0 when it was not judged.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public long Of(int aspect, int code)
    {
        var row = rows[aspect];
        return (uint)code < (uint)row.Length ? row[code] : beyond.GetValueOrDefault(KeyOf(aspect, code));
    }

    /// <summary>Keeps the figure of a facet that was not judged before.</summary>
    public long Keep(int aspect, int code, long figure)
    {
        judged.Add((aspect, code));
        if (code < rows[aspect].Length) rows[aspect][code] = figure;
        else beyond.Add(KeyOf(aspect, code), figure);
        return figure;
    }

    /// <summary>Forgets all, and leaves the room to the thread's next query.</summary>
    public void Dispose()
    {
        if (judged.Count > MostKept) return;
        foreach (var (aspect, code) in judged)
        {
            if (code < rows[aspect].Length) rows[aspect][code] = 0;
        }

        judged.Clear();
        beyond.Clear();
        spare = this;
    }

    private static long KeyOf(int aspect, int code) => ((long)aspect << 32) | (uint)code;
}
