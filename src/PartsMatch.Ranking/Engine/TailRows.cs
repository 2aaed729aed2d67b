using System.Collections.Immutable;
using PartsMatch.Ranking.Columns;

namespace PartsMatch.Ranking.Engine;

/// <summary>Rows that came after the sorting, in the order in which they came: they are walked one by one. Immutable.</summary>
/// <param name="All">The rows.</param>
internal sealed record TailRows(ImmutableArray<TailRow> All)
{
    /// <summary>No rows.</summary>
    public static TailRows Empty { get; } = new([]);

    /// <summary>The rows that were written.</summary>
    /// <param name="from">What was written.</param>
    /// <param name="aspects">How many codes each has.</param>
    public static TailRows ReadFrom(ColumnsReader from, int aspects) =>
        new([.. from.Next<int>().Zip(from.Next<int>().Chunk(aspects), (part, codes) => new TailRow(part, codes))]);

    /// <summary>Adds them to what is written.</summary>
    public void AddTo(ColumnsWriter to)
    {
        to.Add<int>(All.Select(row => row.Part).ToArray());
        to.Add<int>(All.SelectMany(row => row.Codes).ToArray());
    }

    /// <summary>Walks over all rows.</summary>
    /// <param name="walk">What judges.</param>
    /// <param name="sorted">The sorted rows: facets are entered in their order, and places go on after them.</param>
    public void Walk<TWalk>(ref TWalk walk, SortedRows sorted)
        where TWalk : IWalk
    {
        for (var row = 0; row < All.Length; row++)
        {
            if (Follow(ref walk, sorted, All[row].Codes, sorted.Count + row)) walk.Take(sorted.Count + row);
        }
    }

    private static bool Follow<TWalk>(ref TWalk walk, SortedRows sorted, int[] codes, int place)
        where TWalk : IWalk
    {
        for (var depth = 0; depth < sorted.Aspects.Count; depth++)
        {
            if (depth == sorted.CostlyFrom && !walk.IsWanted(place, depth)) return false;
            if (!walk.Enter(depth, sorted.Aspects[depth], codes[sorted.Aspects[depth]], place)) return false;
        }

        return sorted.CostlyFrom < sorted.Aspects.Count || walk.IsWanted(place, sorted.Aspects.Count);
    }
}

/// <summary>One row of the tail.</summary>
/// <param name="Part">The part.</param>
/// <param name="Codes">The code of its facet for every aspect of the family.</param>
internal sealed record TailRow(int Part, int[] Codes);
