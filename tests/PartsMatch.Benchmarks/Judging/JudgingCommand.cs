using System.CommandLine;
using System.Globalization;
using PartsMatch.Benchmarks.Engine;
using PartsMatch.Benchmarks.Motors;
using PartsMatch.Fit.Motors;
using Spectre.Console;
using static System.FormattableString;

namespace PartsMatch.Benchmarks.Judging;

/// <summary>What one judgement costs, aspect by aspect: a query over a million parts judges each distinct facet once, and is little else.</summary>
internal static class JudgingCommand
{
    public static Command Make(IAnsiConsole console)
    {
        var parts = EngineCommand.Counted("--parts", 20_000, 1_000_000, "How many motors.");
        var needs = EngineCommand.Counted("--needs", 60, 10_000, "How many different needs.");
        var seed = EngineCommand.Counted("--seed", 1, 1_000_000, "What all chance follows from.");
        var command = new Command("judging", "Measure what a judgement costs, aspect by aspect.") { parts, needs, seed };
        command.SetAction(given => Run(console, given.GetValue(parts), given.GetValue(needs), given.GetValue(seed)));
        return command;
    }

    private static void Run(IAnsiConsole console, int parts, int needs, int seed)
    {
        console.WriteLine(Invariant($"{parts:#,0} motors, {needs} needs, seed {seed}. {Machine.Line(TimeProvider.System)}."));
        var motors = new ManyMotors(parts, seed);
        var facets = FacetTable.Of(motors).Facets;
        var costs = JudgingCost.Measure(MotorFamily.Motor.Aspects, facets, MotorNeeds.Of(motors, needs, seed + 1));
        var table = new Table().Border(TableBorder.Markdown);
        foreach (var head in (string[])["aspect", "distinct facets", "ns a judgement", "bytes a judgement", "ns, the first of a need"]) table.AddColumn(head);
        foreach (var column in table.Columns.Skip(1)) column.RightAligned();
        foreach (var cost in costs.OrderByDescending(cost => cost.Nanoseconds))
        {
            table.AddRow(cost.Aspect.Name, Whole(cost.Facets), Whole(cost.Nanoseconds), Whole(cost.Bytes), Whole(cost.FirstNanoseconds));
        }

        console.Write(table);
        console.WriteLine(Invariant($"Of every need the least of {JudgingCost.Rounds} rounds, {JudgingCost.Judgements} judgements an aspect. The first judgement of a need works out what follows from the need alone."));
    }

    private static string Whole(double value) => value.ToString("#,0", CultureInfo.InvariantCulture);
}
