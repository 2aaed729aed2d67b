using System.Collections.Immutable;

namespace PartsMatch.Ranking.Engine;

/// <summary>Rows that came after the sorting, in the order in which they came: they are walked one by one. Immutable.</summary>
/// <param name="All">The rows.</param>
internal sealed record TailRows(ImmutableArray<TailRow> All)
{
    /// <summary>No rows.</summary>
    public static TailRows Empty { get; } = new([]);

    /// <summary>Walks over all rows.</summary>
    /// <param name="walk">What judges.</param>
    /// <param name="aspects">The aspects, in the order in which facets are entered.</param>
    /// <param name="firstPlace">The place of the first row: places go on after the sorted rows.</param>
    public void Walk<TWalk>(ref TWalk walk, IReadOnlyList<int> aspects, int firstPlace)
        where TWalk : IWalk
    {
        for (var row = 0; row < All.Length; row++)
        {
            var (part, codes) = All[row];
            if (!walk.IsWanted(part, firstPlace + row, depth: 0)) continue;
            var depth = 0;
            while (depth < aspects.Count && walk.Enter(depth, aspects[depth], codes[aspects[depth]])) depth++;
            if (depth == aspects.Count) walk.Take(part, firstPlace + row);
        }
    }
}

/// <summary>One row of the tail.</summary>
/// <param name="Part">The part.</param>
/// <param name="Codes">The code of its facet for every aspect of the family.</param>
internal sealed record TailRow(int Part, int[] Codes);
