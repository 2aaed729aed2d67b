using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using System.Net;
using System.Net.Http.Headers;
using System.Text.Json;
using PartsMatch.Service.Exchange;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Commands;

/// <summary>import: a table in; what it says beside the catalogue out, and with --take into the catalogue.</summary>
internal static class ImportCommand
{
    private static readonly JsonSerializerOptions Readable = new(ExchangeJson.Options) { WriteIndented = true };

    public static Command Make(Option<string?> data, TextWriter output, TextWriter errors)
    {
        var file = new Argument<string>("file") { Description = "The table: CSV in UTF-8, with the columns of an export." };
        file.Validators.Add(given =>
        {
            // An option that is not known would otherwise be taken for a file.
            if (given.Tokens is [{ Value: { } text }, ..] && text.StartsWith("--", StringComparison.Ordinal)) given.AddError($"There is no option “{text}”.");
        });
        var kind = TableOptions.Kind();
        var take = new Option<bool>("--take") { Description = "Write the good rows. Without it nothing is written.", Arity = ArgumentArity.Zero };
        var seen = new Option<long?>("--seen") { Description = "The number that the preview told: what others wrote since is then left as it is, and told.", CustomParser = WholeNumber };
        var json = new Option<bool>("--json") { Description = "Print the service's report as JSON.", Arity = ArgumentArity.Zero };
        var report = new Option<string?>("--report") { Description = "A file to write all bad rows into, with what is wrong with each: CSV." };
        var import = new Command("import", "Compare a table with the catalogue; with --take, write what is good of it.") { file, kind, take, seen, report, json };
        import.SetAction(async (given, stop) =>
        {
            var path = given.GetValue(file)!;
            await using var bytes = Open(path);
            if (bytes is null)
            {
                await errors.WriteLineAsync($"{path} cannot be read: there is no such file, or this user may not read it.");
                return ExitCode.BadInput;
            }

            if (given.GetValue(report) is { Length: > 0 } into && SameFile.Is(path, into))
            {
                await errors.WriteLineAsync($"{into} is the table itself, and would be written over. Name another file with --report.");
                return ExitCode.BadInput;
            }

            var wanted = new WantedImport(path, bytes, given.GetValue(kind)!, given.GetValue(take), given.GetValue(seen), given.GetValue(report), given.GetValue(json));
            return await Asking.WithClientAsync(given.GetValue(data), client => RunAsync(client, wanted, output, errors, stop), errors, stop);
        });
        return import;
    }

    private static FileStream? Open(string path)
    {
        try
        {
            return File.OpenRead(path);
        }
        catch (Exception failed) when (TableOptions.IsOfTheDisk(failed))
        {
            return null;
        }
    }

    private static long? WholeNumber(ArgumentResult given)
    {
        var text = given.Tokens is [{ Value: var typed }, ..] ? typed : string.Empty;
        if (long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number)) return number;
        given.AddError($"--seen takes the whole number that the preview told, not “{text}”.");
        return null;
    }

    private static async Task<int> RunAsync(HttpClient client, WantedImport wanted, TextWriter output, TextWriter errors, CancellationToken stop)
    {
        // A large file takes its time, and says how far it has come.
        client.Timeout = Timeout.InfiniteTimeSpan;
        using var request = new HttpRequestMessage(HttpMethod.Post, string.Create(CultureInfo.InvariantCulture, $"import/{wanted.Kind}?take={(wanted.Take ? "true" : "false")}&seen={wanted.Seen}&refused={(wanted.Report is null ? "false" : "true")}"))
        {
            Content = new StreamContent(wanted.Bytes) { Headers = { ContentType = new("text/csv", "utf-8") } },
            // A request that is refused is refused before the file is sent.
            Headers = { ExpectContinue = true, Accept = { new MediaTypeWithQualityHeaderValue(ExchangeJson.Lines) } },
        };
        using var answer = await client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, stop);
        if (!answer.IsSuccessStatusCode) return await Problem.TellAsync(answer, errors, stop);
        var refused = new RefusedRows();
        var last = await ProgressBar.ImportingAsync(ProgressBar.Behind(errors), wanted.Take, progress => LastLineAsync(answer, progress, refused, stop));
        if (!last.TryGetProperty("told", out _)) return await Problem.TellAsync(last, (HttpStatusCode)last.GetProperty("status").GetInt32(), errors);
        var report = last.Deserialize<ImportReport>(ExchangeJson.Options)!;
        if (wanted.Json) await output.WriteLineAsync(JsonSerializer.Serialize(report, Readable));
        else await ImportView.WriteAsync(report, wanted.Path, output);
        await ImportView.WriteRefusedAsync(report, errors);
        if (wanted.Report is { } path && !await SaveAsync(refused, path, stop))
        {
            await errors.WriteLineAsync(WholeFile.CannotBeWritten(path, "--report"));
            return ExitCode.BadInput;
        }

        return report.Bad + report.Conflicts > 0 ? ExitCode.RowsRefused : ExitCode.Success;
    }

    private static Task<bool> SaveAsync(RefusedRows refused, string path, CancellationToken stop) => WholeFile.TryWriteAsync(path, async file =>
    {
        await using var text = new StreamWriter(file, leaveOpen: true);
        await refused.WriteAsync(text, stop);
    });

    /// <summary>The lines before the last say how far it has come, and then, when asked, each row that was refused.</summary>
    private static async Task<JsonElement> LastLineAsync(HttpResponseMessage answer, IProgress<ImportProgress>? progress, RefusedRows refused, CancellationToken stop)
    {
        using var lines = new StreamReader(await answer.Content.ReadAsStreamAsync(stop));
        while (await lines.ReadLineAsync(stop) is { } line)
        {
            var said = JsonElement.Parse(line);
            if (said.TryGetProperty("state", out _))
            {
                refused.Add(said.Deserialize<RowTold>(ExchangeJson.Options)!);
                continue;
            }

            if (!said.TryGetProperty("read", out _)) return said;
            progress?.Report(said.Deserialize<ImportProgress>(ExchangeJson.Options));
        }

        throw new HttpIOException(HttpRequestError.ResponseEnded);
    }

    private sealed record WantedImport(string Path, Stream Bytes, string Kind, bool Take, long? Seen, string? Report, bool Json);
}
