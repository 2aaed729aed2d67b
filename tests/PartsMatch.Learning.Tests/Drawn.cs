namespace PartsMatch.Learning.Tests;

/// <summary>Examples drawn from costs that the test knows, so that what a fit finds can be held against them.</summary>
internal static class Drawn
{
    private static readonly DateOnly Day = new(2026, 3, 14);

    /// <summary>So many examples of columns that are each there with a chance, 0 to 1 high.</summary>
    public static List<Example> Of(Costs truth, int count, int seed, double there = 0.4, int places = 40)
    {
        var random = new Random(seed);
        var examples = new List<Example>();
        while (examples.Count < count)
        {
            List<(int Column, double Value)> row = [];
            for (var column = 0; column < truth.OfColumn.Length; column++)
            {
                if (random.NextDouble() < there) row.Add((column, 0.05 + (0.95 * random.NextDouble())));
            }

            var drawn = Example([.. row.Select(one => one.Column)], [.. row.Select(one => one.Value)], Result.RightFirstTime, FormattableString.Invariant($"place {examples.Count % places}"));
            var worked = random.NextDouble() < 1 / (1 + Math.Exp(-drawn.LogOdds(truth)));
            examples.Add(drawn with { Result = worked ? Result.RightFirstTime : random.Next(2) == 0 ? Result.Reworked : Result.CameBack });
        }

        return examples;
    }

    /// <summary>One example.</summary>
    public static Example Example(int[] columns, double[] values, Result result, string place = "a place", string part = "Q-1") =>
        new(columns, values, string.Empty, Day, place, string.Empty, part, result);

    public static double ChanceOf(double logOdds) => 1 / (1 + Math.Exp(-logOdds));
}
