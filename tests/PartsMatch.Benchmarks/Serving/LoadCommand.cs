using System.CommandLine;
using System.Text.Json;

namespace PartsMatch.Benchmarks.Serving;

/// <summary>The process that loads the service: the benchmark's own executable once more, told by files what to send.</summary>
internal static class LoadCommand
{
    private const string Name = "load";

    public static Command Make()
    {
        var (service, request) = (new Argument<Uri>("service") { CustomParser = given => new(given.Tokens[0].Value) }, new Argument<FileInfo>("request"));
        var (connections, seconds, least) = (new Argument<int>("connections"), new Argument<int>("seconds"), new Argument<int>("least"));
        var command = new Command(Name, "Load a service.") { service, request, connections, seconds, least };
        command.Hidden = true;
        command.SetAction(async (given, stop) =>
        {
            var asked = JsonSerializer.Deserialize<LoadRequest>(await File.ReadAllTextAsync(given.GetRequiredValue(request).FullName, stop))!;
            var result = Load.Run(given.GetRequiredValue(service), asked, given.GetValue(connections), TimeSpan.FromSeconds(given.GetValue(seconds)), given.GetValue(least));
            await Console.Out.WriteAsync(JsonSerializer.Serialize(result));
        });
        return command;
    }

    /// <summary>Runs it on one core.</summary>
    public static async Task<LoadResult> RunAsync(int core, Uri service, LoadRequest request, int connections, int seconds, int least, CancellationToken stop)
    {
        var file = Path.GetTempFileName();
        try
        {
            await File.WriteAllTextAsync(file, JsonSerializer.Serialize(request), stop);
            using var process = Pinned.Start(core, Path.Combine(AppContext.BaseDirectory, "PartsMatch.Benchmarks"), Name, service.ToString(), file, FormattableString.Invariant($"{connections}"), FormattableString.Invariant($"{seconds}"), FormattableString.Invariant($"{least}"));
            var (output, errors) = (process.StandardOutput.ReadToEndAsync(stop), process.StandardError.ReadToEndAsync(stop));
            await process.WaitForExitAsync(stop);
            return process.ExitCode == 0 ? JsonSerializer.Deserialize<LoadResult>(await output)! : throw new InvalidOperationException($"The load could not be run. {await errors}");
        }
        finally
        {
            File.Delete(file);
        }
    }
}
