using System.CommandLine;
using System.Globalization;
using PartsMatch.Benchmarks.Engine;
using PartsMatch.Benchmarks.Motors;
using Spectre.Console;
using static System.FormattableString;

namespace PartsMatch.Benchmarks.Starting;

/// <summary>From the start of the service's process to its first answer, and what it takes of memory then: on a store that was left in order, and on one whose derived files are gone.</summary>
internal static class StartCommand
{
    private const string Aim = "Aims on two cores: 1,000,000 parts answer in under 10 s and under 400 MB resident; 3,000 in under 1 s, published ReadyToRun.";

    public static Command Make(IAnsiConsole console)
    {
        var parts = EngineCommand.Counted("--parts", 3_000, BestRows.MostRows, "How many motors.");
        var runs = EngineCommand.Counted("--runs", 5, 100, "How often it is started.");
        var seed = EngineCommand.Counted("--seed", 1, 1_000_000, "What all chance follows from.");
        var service = new Option<FileInfo>("--service") { Description = "The service's executable, such as a published one; the built one where nothing is said." };
        var folder = MotorStore.Kept();
        var command = new Command("start", "Measure from the service's start to its first answer.") { parts, runs, seed, service, folder };
        command.SetAction((given, stop) => RunAsync(console, new(given.GetValue(parts), given.GetValue(seed)), given.GetValue(runs), given.GetValue(service), given.GetValue(folder), stop));
        return command;
    }

    private static async Task RunAsync(IAnsiConsole console, ManyMotors motors, int runs, FileInfo? service, DirectoryInfo? folder, CancellationToken stop)
    {
        var executable = service?.FullName ?? Path.Combine(AppContext.BaseDirectory, "PartsMatch.Service");
        console.WriteLine(Invariant($"{motors.Count:#,0} motors, {executable}. {Machine.Line(TimeProvider.System)}."));
        using var store = EngineCommand.Timed(console, "Kept in a store and read into the engine", () => new MotorStore(motors, folder));
        EngineCommand.Timed(console, "Left in order", () =>
        {
            store.Close();
            return store;
        });

        var table = new Table().Border(TableBorder.Markdown).AddColumns("start", "listens s", "first answer s", "processor s", "resident MB", "stops s");
        for (var run = 1; run <= runs; run++)
            Add(table, Invariant($"left in order, {run}"), await StartedService.RunAsync(executable, store.Folder, stop));
        foreach (var derived in RankingsFiles(store)) File.Delete(derived);
        Add(table, "ranking's files gone", await StartedService.RunAsync(executable, store.Folder, stop));
        foreach (var derived in (string[])[.. RankingsFiles(store), Path.Combine(store.Folder, "partsmatch.parts")]) File.Delete(derived);
        Add(table, "all derived files gone", await StartedService.RunAsync(executable, store.Folder, stop));
        console.Write(table);
        console.WriteLine(Aim);
    }

    private static IEnumerable<string> RankingsFiles(MotorStore store) => ((string[])["*.columns", "*.machines"]).SelectMany(files => Directory.GetFiles(store.Folder, files));

    private static void Add(Table table, string what, StartedService.Run run)
    {
        string[] cells = [what, Seconds(run.Listens), Seconds(run.Answers), Seconds(run.Processor), (run.ResidentBytes / 1e6).ToString("0", CultureInfo.InvariantCulture), Seconds(run.Stops)];
        table.AddRow(cells);
    }

    private static string Seconds(TimeSpan time) => time.TotalSeconds.ToString("0.00", CultureInfo.InvariantCulture);
}
