using System.CommandLine;
using System.Text;
using PartsMatch.Service.Exchange;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Commands;

/// <summary>export: a table of the catalogue to standard output or into a file.</summary>
internal static class ExportCommand
{
    public static Command Make(Option<string?> data, TextWriter output, TextWriter errors)
    {
        var kind = TableOptions.Kind();
        var into = new Option<string?>("--out") { Description = "The file to write; one of that name is replaced once the new one is whole. Default: standard output." };
        var export = new Command("export", "Export a table of the catalogue as CSV.") { kind, into };
        export.SetAction((given, stop) => Asking.WithClientAsync(given.GetValue(data), client => RunAsync(client, CatalogueTable.Find(given.GetValue(kind)!)!, given.GetValue(into), output, errors, stop), errors, stop));
        return export;
    }

    private static async Task<int> RunAsync(HttpClient client, CatalogueTable table, string? into, TextWriter output, TextWriter errors, CancellationToken stop)
    {
        using var answer = await client.GetAsync($"export/{table.Kind}.csv", HttpCompletionOption.ResponseHeadersRead, stop);
        if (!answer.IsSuccessStatusCode) return await Problem.TellAsync(answer, errors, stop);
        await using var csv = await answer.Content.ReadAsStreamAsync(stop);
        if (into is null)
        {
            await CopyAsync(csv, output, stop);
            return ExitCode.Success;
        }

        return await ProgressBar.ExportingAsync(ProgressBar.Behind(errors), come => SaveAsync(csv, into, come, errors, stop));
    }

    private static async Task CopyAsync(Stream csv, TextWriter output, CancellationToken stop)
    {
        using var text = new StreamReader(csv, Encoding.UTF8);
        var some = new char[16_384];
        for (int length; (length = await text.ReadAsync(some, stop)) > 0;) await output.WriteAsync(some.AsMemory(0, length), stop);
    }

    private static async Task<int> SaveAsync(Stream csv, string into, Action<long>? come, TextWriter errors, CancellationToken stop)
    {
        var isWritten = await WholeFile.TryWriteAsync(into, async file =>
        {
            var some = new byte[81_920];
            for (int length; (length = await csv.ReadAsync(some, stop)) > 0;)
            {
                await file.WriteAsync(some.AsMemory(0, length), stop);
                come?.Invoke(file.Length);
            }
        });
        if (isWritten) return ExitCode.Success;
        await errors.WriteLineAsync(WholeFile.CannotBeWritten(into, "--out"));
        return ExitCode.BadInput;
    }
}
