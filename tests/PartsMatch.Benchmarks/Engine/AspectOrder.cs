namespace PartsMatch.Benchmarks.Engine;

/// <summary>In which order a database shall look at aspects: those first that turn most rows away over all needs.</summary>
internal static class AspectOrder
{
    public static IReadOnlyList<int> Of(FacetTable table, IReadOnlyList<Asked> asked) =>
        [.. Enumerable.Range(0, table.Codes.Length).OrderBy(aspect => Passed(table, aspect, asked))];

    /// <summary>Rows in the order of their codes, the first aspect first.</summary>
    public static int[] Sorted(FacetTable table, IReadOnlyList<int> aspects)
    {
        var rows = Enumerable.Range(0, table.Rows).ToArray();
        Array.Sort(rows, (one, other) =>
        {
            foreach (var aspect in aspects)
            {
                var order = table.Codes[aspect][one].CompareTo(table.Codes[aspect][other]);
                if (order != 0) return order;
            }

            return one.CompareTo(other);
        });
        return rows;
    }

    private static long Passed(FacetTable table, int aspect, IReadOnlyList<Asked> asked)
    {
        var rowsOf = new int[table.Facets[aspect].Count];
        foreach (var code in table.Codes[aspect]) rowsOf[code]++;
        return asked.Sum(one => one.Lists.ByAspect[aspect].Sum(passing => (long)rowsOf[passing.Code]));
    }
}
