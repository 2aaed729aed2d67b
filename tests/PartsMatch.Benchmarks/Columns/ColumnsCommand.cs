using System.CommandLine;
using System.Diagnostics;
using PartsMatch.Benchmarks.Engine;
using PartsMatch.Benchmarks.Motors;
using PartsMatch.Benchmarks.Parts;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Ranking;
using PartsMatch.Ranking.Columns;
using Spectre.Console;
using static System.FormattableString;

namespace PartsMatch.Benchmarks.Columns;

/// <summary>A catalogue of many motors, written to a file and read back: how long that takes, how large it is there and in memory, and whether it answers the same.</summary>
internal static class ColumnsCommand
{
    private const int Needs = 20;

    public static Command Make(IAnsiConsole console)
    {
        var parts = EngineCommand.Counted("--parts", 1_000_000, BestRows.MostRows, "How many motors.");
        var seed = EngineCommand.Counted("--seed", 1, 1_000_000, "What all chance follows from.");
        var command = new Command("columns", "Measure writing a catalogue to a file and reading it back.") { parts, seed };
        command.SetAction(given => Run(console, given.GetValue(parts), given.GetValue(seed)));
        return command;
    }

    private static void Run(IAnsiConsole console, int parts, int seed)
    {
        console.WriteLine(Invariant($"{parts:#,0} motors, seed {seed}. {Machine.Line(TimeProvider.System)}."));
        var motors = new ManyMotors(parts, seed);
        var needs = MotorNeeds.Of(motors, Needs, seed + 1);
        var path = Path.GetTempFileName();
        try
        {
            var expected = Written(console, motors, needs, path);
            var before = GC.GetTotalMemory(forceFullCollection: true);
            var read = Measured(console, "Read", () => Read(path));
            var held = GC.GetTotalMemory(forceFullCollection: true) - before;
            console.WriteLine(Invariant($"Held by the catalogue read: {held / 1e6:0.0} MB, {held / (double)parts:0.0} bytes a part, {read.Figures.RowBytes / (double)parts:0.0} of them its row's; the process is {Environment.WorkingSet / 1e6:0} MB. {read.Figures.Facets.Sum():#,0} facets."));
            var answers = Measured(console, Invariant($"First answers to {Needs} needs"), () => Answered(read, needs));
            if (!answers.SequenceEqual(expected)) throw new AnswersDifferException("The catalogue read does not answer as the one written does.");
            console.WriteLine(Invariant($"Held with what they judged: {(GC.GetTotalMemory(forceFullCollection: true) - before) / 1e6:0.0} MB. {answers.Count:#,0} parts found, the same in both."));
            GC.KeepAlive(read);
        }
        finally
        {
            File.Delete(path);
        }
    }

    /// <summary>Writes the catalogue, and lets it go.</summary>
    /// <returns>What it answers.</returns>
    private static List<string> Written(IAnsiConsole console, ManyMotors motors, IReadOnlyList<Need> needs, string path)
    {
        var made = Measured(console, "Made of its parts", () => Catalogue.Of(MotorFamily.Motor, motors.Parts)
            .WithStock(Enumerable.Range(0, motors.Count).Select(row => KeyValuePair.Create(ManyParts.NumberAt(row), motors.StockAt(row)))));
        var bytes = Measured(console, "Written", () =>
        {
            using var to = File.Create(path);
            made.WriteTo(to, asOf: 0);
            return to.Length;
        });
        console.WriteLine(Invariant($"File: {bytes / 1e6:0.0} MB, {bytes / (double)motors.Count:0.0} bytes a part."));
        return Answered(made, needs);
    }

    private static Catalogue Read(string path)
    {
        using var from = File.OpenRead(path);
        return Catalogue.ReadFrom(from, MotorFamily.Motor) is ColumnsReading.Read read ? read.Catalogue : throw new AnswersDifferException("What was written was refused.");
    }

    private static List<string> Answered(Catalogue catalogue, IReadOnlyList<Need> needs)
    {
        var weights = Weights.HandSet(MotorFamily.Motor);
        return [.. needs.SelectMany(need => ((RankingPage.Listed)Ranker.Rank(catalogue, weights, new(need, Include: null, First: 20, After: null))).Parts.Select(part => part.Cursor))];
    }

    /// <summary>Does something, and prints how long it took, by the clock and of all cores.</summary>
    private static T Measured<T>(IAnsiConsole console, string what, Func<T> make)
    {
        using var process = Process.GetCurrentProcess();
        var (start, before) = (Stopwatch.GetTimestamp(), process.TotalProcessorTime);
        var made = make();
        var seconds = Stopwatch.GetElapsedTime(start).TotalSeconds;
        process.Refresh();
        console.WriteLine(Invariant($"{what}: {seconds:0.00} s, {(process.TotalProcessorTime - before).TotalSeconds:0.00} s of processors."));
        return made;
    }
}
