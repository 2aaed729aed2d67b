using PartsMatch.Ranking;

namespace PartsMatch.Benchmarks.Engine;

/// <summary>What anyone would write first: over all rows, aspect by aspect, over codes of one, two or four bytes.</summary>
internal sealed class PlainLoop(FacetTable table, Weights weights) : Contender("plain loop")
{
    /// <summary>So many rows at a time stay in the nearest cache.</summary>
    private const int Block = 2048;

    private readonly CodeColumn[] columns = [.. table.Codes.Select((codes, aspect) => CodeColumn.Of(codes, table.Facets[aspect].Count))];
    private readonly BestRows best = new(First);
    private readonly int[] rows = new int[Block];
    private readonly int[] sums = new int[Block];

    public override double? BytesAPart => columns.Sum(column => column.BytesARow) + sizeof(byte) + sizeof(int);

    public override void MakeReady(Asked asked)
    {
        foreach (var (aspect, column) in columns.Index()) column.Take(asked.Lists.ByAspect[aspect]);
    }

    public override IReadOnlyList<int> Best(Asked asked)
    {
        best.Clear();
        for (var from = 0; from < table.Rows; from += Block)
        {
            var left = Math.Min(Block, table.Rows - from);
            for (var i = 0; i < left; i++) (rows[i], sums[i]) = (from + i, 0);
            foreach (var column in columns) left = column.Keep(rows.AsSpan(0, left), sums.AsSpan(0, left));
            for (var i = 0; i < left; i++) best.Add(weights.LikelihoodOf(new(sums[i])).Percent, table.Supply[rows[i]], table.Cents[rows[i]], rows[i]);
        }

        return best.Rows;
    }
}
