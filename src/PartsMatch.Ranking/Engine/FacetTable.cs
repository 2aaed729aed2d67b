using PartsMatch.Ranking.Columns;

namespace PartsMatch.Ranking.Engine;

/// <summary>The distinct facets of an aspect, kept as bytes: one is only made a value when a query first judges it, and then kept. Safe to read while one writer adds.</summary>
/// <param name="form">How they are written.</param>
/// <param name="all">Their bytes.</param>
internal sealed class FacetTable(FacetForm form, Numbered all)
{
    private readonly FacetForm form = form;
    private object?[] made = [];

    /// <summary>How many distinct facets there are.</summary>
    public int Count => all.Count;

    /// <summary>Their bytes.</summary>
    public Numbered All => all;

    /// <summary>The facet of a code.</summary>
    public object this[int code]
    {
        get
        {
            var kept = Volatile.Read(ref made);
            if (code >= kept.Length) kept = Grown(code);
            return Volatile.Read(ref kept[code]) is { } facet ? facet : kept[code] = form.ReadWhole(all[code]);
        }
    }

    /// <summary>An empty table for as many facets of the same kind.</summary>
    public FacetTable Emptied() => new(form, all.Emptied());

    /// <summary>The code of a facet that was written; a new one gets the next.</summary>
    public int Add(ReadOnlySpan<byte> facet) => all.Add(facet);

    /// <summary>Whether another table holds the same facets under the same codes.</summary>
    public bool IsLike(FacetTable other) => form == other.form && all.IsLike(other.All);

    /// <summary>Room for all, and for some that are added. What another thread makes meanwhile and puts into the old room is made again.</summary>
    private object?[] Grown(int code)
    {
        lock (all)
        {
            if (code < made.Length) return made;
            var grown = new object?[all.Count + (made.Length / 8)];
            made.CopyTo(grown, 0);
            Volatile.Write(ref made, grown);
            return grown;
        }
    }
}
