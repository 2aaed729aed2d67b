using System.Globalization;
using Spectre.Console;
using static System.FormattableString;

namespace PartsMatch.Benchmarks.Engine;

/// <summary>Says what was measured, in tables that a page can quote as they are.</summary>
internal static class EngineReport
{
    /// <summary>What was set for a million parts; more than a wish only as far as the second figure.</summary>
    private const string Aim = "Aim at 1,000,000 parts: the engine at least 100 times as fast as the best database (50 is the least); under 4 times as long at 10,000,000.";

    /// <summary>What is asked of what.</summary>
    public static void Write(IAnsiConsole console, FacetTable table, IReadOnlyList<Asked> asked)
    {
        var facets = table.Family.Aspects.Select((aspect, at) => Invariant($"{aspect.Title.ToLowerInvariant()} {table.Facets[at].Count:#,0}"));
        console.WriteLine($"Distinct facets: {string.Join(", ", facets)}.");
        double[] admitted = [.. asked.Select(one => 100.0 * one.Lists.Admitted / table.Rows).Order()];
        console.WriteLine(Invariant($"Parts admitted a need: {admitted[0]:0.###} to {admitted[^1]:0.###} %, a tenth of the needs under {admitted[admitted.Length / 10]:0.###}, half under {admitted[admitted.Length / 2]:0.###}, nine tenths under {admitted[admitted.Length * 9 / 10]:0.###} %."));
    }

    public static void Write(IAnsiConsole console, IReadOnlyList<Lap> laps)
    {
        var best = laps.Where(lap => lap.Contender.IsDatabase).MinBy(lap => lap.Median);
        var table = new Table().Border(TableBorder.Markdown);
        foreach (var head in (string[])["engine", "median ms", "p99 ms", "times as fast as the best database", "facets judged", "rows and prefixes touched", "bytes a part"]) table.AddColumn(head);
        foreach (var column in table.Columns.Skip(1)) column.RightAligned();
        foreach (var lap in laps)
        {
            table.AddRow(
                lap.Contender.Name,
                Milliseconds(lap.Median),
                Milliseconds(lap.Percentile99),
                best is null ? string.Empty : (best.Median / lap.Median).ToString("0.##", CultureInfo.InvariantCulture),
                Mean(lap, figures => figures.FacetsJudged),
                Mean(lap, figures => figures.RowsTouched),
                lap.Contender.BytesAPart?.ToString("0", CultureInfo.InvariantCulture) ?? string.Empty);
        }

        console.Write(table);
        console.WriteLine(Aim);
    }

    private static string Milliseconds(double value) => value.ToString(value < 1 ? "0.0000" : "0.00", CultureInfo.InvariantCulture);

    private static string Mean(Lap lap, Func<EngineFigures, long?> figure) =>
        lap.Figures.Average(figure)?.ToString("#,0", CultureInfo.InvariantCulture) ?? string.Empty;
}
