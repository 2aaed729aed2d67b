using System.CommandLine;
using System.Diagnostics;
using System.Text;
using PartsMatch.Benchmarks.Engine;
using PartsMatch.Benchmarks.Motors;
using Spectre.Console;
using static System.FormattableString;

namespace PartsMatch.Benchmarks.Lists;

/// <summary>Cross-reference of lists, from a list's bytes to an answer's, on all cores and without a network: rows of which all that decides is known, and rows that leave something open, apart.</summary>
internal static class ListsCommand
{
    /// <summary>Rows that the runtime is warmed up with; they are other rows than those that are timed.</summary>
    private const int WarmUp = 1_000;

    public static Command Make(IAnsiConsole console)
    {
        var parts = EngineCommand.Counted("--parts", 1_000_000, BestRows.MostRows, "How many motors.");
        var known = EngineCommand.Counted("--known", 20_000, 100_000, "How many rows without unknowns, all different.");
        var open = EngineCommand.Counted("--open", 2_000, 100_000, "How many rows with unknowns, all different.");
        var seed = EngineCommand.Counted("--seed", 1, 1_000_000, "What all chance follows from.");
        var folder = MotorStore.Kept();
        var command = new Command("lists", "Measure the cross-reference of lists.") { parts, known, open, seed, folder };
        command.SetAction((given, stop) => RunAsync(console, given.GetValue(parts), given.GetValue(known), given.GetValue(open), given.GetValue(seed), given.GetValue(folder), stop));
        return command;
    }

    private static async Task RunAsync(IAnsiConsole console, int parts, int known, int open, int seed, DirectoryInfo? folder, CancellationToken stop)
    {
        console.WriteLine(Invariant($"{parts:#,0} motors, seed {seed}. {Machine.Line(TimeProvider.System)}."));
        var motors = new ManyMotors(parts, seed);
        using var service = EngineCommand.Timed(console, "Kept in a store and read into the engine", () => new ListService(motors, folder));
        var rows = new OldMotors(motors, service, seed + 1);
        foreach (var (what, isOpen, count) in new[] { ("without unknowns", false, known), ("with unknowns", true, open) })
        {
            var drawn = EngineCommand.Timed(console, Invariant($"Drew rows {what}"), () => rows.Draw(count + WarmUp, isOpen));
            await service.AnswerAsync(OldMotors.List(drawn.Take(WarmUp)), stop);
            var list = OldMotors.List(drawn.Skip(WarmUp));
            var start = Stopwatch.GetTimestamp();
            var answer = await service.AnswerAsync(list, stop);
            var seconds = Stopwatch.GetElapsedTime(start).TotalSeconds;
            var (answered, found) = ListService.Counted(answer);
            var wanted = drawn.Count - WarmUp;
            if (answered != wanted) throw new AnswersDifferException(Invariant($"Of {wanted} rows {answered} were answered."));
            console.WriteLine(Invariant($"Rows {what}: {wanted:#,0} in {seconds:0.00} s, {wanted / seconds:#,0} a second; {found:#,0} of them have a replacement. List {Encoding.UTF8.GetByteCount(list) / 1e6:0.0} MB, answer {answer.Length / 1e6:0.0} MB."));
        }
    }
}
