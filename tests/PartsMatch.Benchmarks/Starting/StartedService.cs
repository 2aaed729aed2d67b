using System.Diagnostics;
using System.Net.Http.Json;
using System.Text.Json;

namespace PartsMatch.Benchmarks.Starting;

/// <summary>The service as a process of its own, started, asked once and stopped.</summary>
internal static class StartedService
{
    private const string Listens = "PartsMatch listens at ";

    private const string Query = """
        {"query": "{ replacements(need: {motor: {plateText: \"HP 1/4 RPM 1075 V 208-230 PH 1 HZ 60 A 2.1 FR 48Y ROT CCW LE INS B AMB 60C CAP 5/370 TEAO SHAFT 1/2 IN\", site: {volts: \"202 V\"}}}, first: 10) { edges { node { part { number } fit likelihood } } } }"}
        """;

    /// <summary>One start.</summary>
    /// <param name="Listens">From the process's start to its word that it listens.</param>
    /// <param name="Answers">From the process's start to the first answer's last byte.</param>
    /// <param name="Processor">What it worked until then, on all cores.</param>
    /// <param name="ResidentBytes">What it has of memory then.</param>
    /// <param name="Stops">From being told to stop to its end.</param>
    internal sealed record Run(TimeSpan Listens, TimeSpan Answers, TimeSpan Processor, long ResidentBytes, TimeSpan Stops);

    public static async Task<Run> RunAsync(string executable, string folder, CancellationToken stop)
    {
        var start = Stopwatch.GetTimestamp();
        using var process = Process.Start(new ProcessStartInfo(executable, ["--data", folder, "--urls", "http://127.0.0.1:0"]) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false })!;
        // Nobody reads what it logs; full, its pipe would stop it.
        _ = process.StandardError.ReadToEndAsync(stop);
        var address = await AddressAsync(process, stop);
        var listens = Stopwatch.GetElapsedTime(start);
        using var client = new HttpClient { BaseAddress = address };
        using var response = await client.PostAsync(new Uri("/graphql", UriKind.Relative), new StringContent(Query, System.Text.Encoding.UTF8, "application/json"), stop);
        var answer = await response.Content.ReadFromJsonAsync<JsonElement>(stop);
        var answers = Stopwatch.GetElapsedTime(start);
        if (answer.TryGetProperty("errors", out var errors)) throw new InvalidOperationException($"The service did not answer. {errors}");
        process.Refresh();
        var (processor, resident) = (process.TotalProcessorTime, process.WorkingSet64);
        var told = Stopwatch.GetTimestamp();
        Stopped.InOrder(process);
        return new(listens, answers, processor, resident, Stopwatch.GetElapsedTime(told));
    }

    private static async Task<Uri> AddressAsync(Process process, CancellationToken stop)
    {
        while (await process.StandardOutput.ReadLineAsync(stop) is { } line)
        {
            if (line.StartsWith(Listens, StringComparison.Ordinal)) return new(line[Listens.Length..].Split(';')[0]);
        }

        throw new InvalidOperationException("The service did not start.");
    }
}
