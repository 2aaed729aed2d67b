using System.CommandLine;
using System.Globalization;
using PartsMatch.Benchmarks.Engine;
using PartsMatch.Benchmarks.Motors;
using Spectre.Console;
using static System.FormattableString;

namespace PartsMatch.Benchmarks.Serving;

/// <summary>Requests a second over loopback, the service and what loads it on one core each: a plain endpoint, GraphQL by itself, and the replacements of failed motors.</summary>
internal static class ServiceCommand
{
    private const string Aim = "Aims: a trivial field at least 65 % of the plain endpoint, replacements at least 25 % of the trivial field.";
    private const int ServiceCore = 0;
    private const int LoadCore = 1;

    public static Command Make(IAnsiConsole console)
    {
        var parts = EngineCommand.Counted("--parts", 3_000, BestRows.MostRows, "How many motors.");
        var plates = EngineCommand.Counted("--plates", 400, 100_000, "How many different plates with their places.");
        var connections = EngineCommand.Counted("--connections", 4, 64, "How many connections.");
        var seconds = EngineCommand.Counted("--seconds", 5, 3600, "How long each is measured.");
        var warmUp = EngineCommand.Counted("--warm-up", 5_000, 1_000_000, "How many of each are answered before it is measured: the runtime compiles anew what is asked often.");
        var seed = EngineCommand.Counted("--seed", 1, 1_000_000, "What all chance follows from.");
        var folder = MotorStore.Kept();
        var command = new Command("service", "Measure how many requests a second the service answers.") { parts, plates, connections, seconds, warmUp, seed, folder };
        command.SetAction((given, stop) => RunAsync(console, given.GetValue(parts), given.GetValue(plates), given.GetValue(connections), given.GetValue(seconds), given.GetValue(warmUp), given.GetValue(seed), given.GetValue(folder), stop));
        return command;
    }

    private static async Task RunAsync(IAnsiConsole console, int parts, int plates, int connections, int seconds, int warmUp, int seed, DirectoryInfo? folder, CancellationToken stop)
    {
        console.WriteLine(Invariant($"{parts:#,0} motors, {plates:#,0} plates, {connections} connections, {seconds} s each, seed {seed}. {Machine.Line(TimeProvider.System)}."));
        var motors = new ManyMotors(parts, seed);
        using var store = EngineCommand.Timed(console, "Kept in a store and read into the engine", () => new MotorStore(motors, folder));
        var failed = EngineCommand.Timed(console, "Drew plates and places", () => FailedMotor.Draw(motors, store, plates, seed + 1));
        store.Close();
        using var service = await ServiceProcess.StartAsync(store.Folder, ServiceCore, stop);
        var table = new Table().Border(TableBorder.Markdown);
        foreach (var head in (string[])["request", "a second", "of the one above", "median ms", "p99 ms", "the service's CPU µs a request"]) table.AddColumn(head);
        foreach (var column in table.Columns.Skip(1)) column.RightAligned();
        var above = double.NaN;
        foreach (var (what, request) in new[]
        {
            ("plain endpoint", new LoadRequest("/health/live", [], "live")),
            ("trivial GraphQL field", new LoadRequest("/graphql", ["{\"query\":\"{__typename}\"}"], "\"Query\"")),
            ("replacements of a plate's text", new LoadRequest("/graphql", [.. failed.Select(one => one.Asked)], "\"likelihood\"")),
        })
        {
            await RunAsync(request, least: warmUp);
            var before = service.Worked;
            var result = await RunAsync(request, least: 1);
            var rate = result.Answers / result.Seconds;
            table.AddRow(what, Text(rate, "#,0"), double.IsNaN(above) ? string.Empty : Text(rate / above, "0.0 %"), Text(result.Median, "0.000"), Text(result.Percentile99, "0.000"), Text((service.Worked - before).TotalMicroseconds / result.Answers, "#,0.0"));
            above = rate;
        }

        console.Write(table);
        console.WriteLine(Aim);

        async Task<LoadResult> RunAsync(LoadRequest request, int least)
        {
            var result = await LoadCommand.RunAsync(LoadCore, service.Address, request, connections, seconds, least, stop);
            return result.Wrong is null && result.Answers > 0 ? result : throw new AnswersDifferException($"{request.Path} was not answered as it should be: {result.Wrong}");
        }
    }

    private static string Text(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
