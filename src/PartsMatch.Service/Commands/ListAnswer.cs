using System.Globalization;
using System.Text;
using PartsMatch.Service.Exchange;
using PartsMatch.Service.Exchange.Lists;
using PartsMatch.Service.Hosting;
using Spectre.Console;

namespace PartsMatch.Service.Commands;

/// <summary>A list that is to be cross-referenced.</summary>
internal sealed record AskedList(byte[] List, int First, int FromRow);

/// <summary>The answer to a list, printed or put into a file as it comes.</summary>
internal static class ListAnswer
{
    /// <summary>Rows and a bar on one terminal would be written over each other: there the rows are shown alone.</summary>
    public static Task<int> PrintAsync(HttpClient client, AskedList asked, TextWriter output, TextWriter errors, CancellationToken stop) => AskAsync(client, asked, ReferenceEquals(output, Console.Out) && !Console.IsOutputRedirected ? null : ProgressBar.Behind(errors), errors, async (csv, come) =>
    {
        using var text = new StreamReader(csv, Encoding.UTF8);
        var some = new char[16_384];
        for (int length; (length = await text.ReadAsync(some, stop)) > 0;)
        {
            await output.WriteAsync(some.AsMemory(0, length), stop);
            come.Count(some.AsSpan(0, length));
        }
    }, stop);

    /// <summary>Whatever ends it leaves the rows that came in the file, and the same command goes on behind them.</summary>
    public static async Task<int> ContinueAsync(HttpClient client, AskedList asked, string path, TextWriter errors, CancellationToken stop)
    {
        try
        {
            await using var file = new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.Read);
            var written = new byte[file.Length];
            await file.ReadExactlyAsync(written, stop);
            var header = await HeaderAsync(asked, stop);
            if (CutOff.Of(written, header) is not { } whole)
            {
                await errors.WriteLineAsync($"{path} has another header than the answer to this list has, so it is not continued. It belongs to another list or another --first; name another file with --resume.");
                return ExitCode.BadInput;
            }

            return await AskAsync(client, asked with { FromRow = whole.NextRow }, ProgressBar.Behind(errors), errors, async (csv, come) =>
            {
                file.SetLength(whole.Length);
                file.Position = whole.Length;
                var (some, letters) = (new byte[16_384], new char[16_384]);
                for (int length; (length = await csv.ReadAsync(some, stop)) > 0;)
                {
                    await file.WriteAsync(some.AsMemory(0, length), stop);
                    come.Count(letters.AsSpan(0, Encoding.Latin1.GetChars(some, 0, length, letters, 0)));
                }
            }, stop);
        }
        catch (Exception failed) when (TableOptions.IsOfTheDisk(failed) && failed is not HttpIOException)
        {
            await errors.WriteLineAsync(WholeFile.CannotBeWritten(path, "--resume"));
            return ExitCode.BadInput;
        }
    }

    private static async Task<int> AskAsync(HttpClient client, AskedList asked, IAnsiConsole? console, TextWriter errors, Func<Stream, ComeRows, Task> take, CancellationToken stop)
    {
        // A long list takes its time; rows come all the while.
        client.Timeout = Timeout.InfiniteTimeSpan;
        using var request = new HttpRequestMessage(HttpMethod.Post, string.Create(CultureInfo.InvariantCulture, $"cross-reference?first={asked.First}&from={asked.FromRow}"))
        {
            Content = new ByteArrayContent(asked.List) { Headers = { ContentType = new("text/csv", "utf-8") } },
            // A request that is refused is refused before the list is sent.
            Headers = { ExpectContinue = true },
        };
        using var answer = await client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, stop);
        if (!answer.IsSuccessStatusCode) return await Problem.TellAsync(answer, errors, stop);
        await using var csv = await answer.Content.ReadAsStreamAsync(stop);
        var rows = int.Parse(answer.Headers.GetValues(ListEndpoint.RowCount).Single(), CultureInfo.InvariantCulture);
        return await ProgressBar.CrossReferencingAsync(console, rows, async tell =>
        {
            await take(csv, new(tell));
            return ExitCode.Success;
        });
    }

    /// <summary>The header that the service writes for this list.</summary>
    private static async Task<byte[]> HeaderAsync(AskedList asked, CancellationToken stop)
    {
        using var text = new StringWriter();
        await CsvText.WriteAsync(text, [ListColumns.Header(new CsvReader(asked.List, _ => false).Header, asked.First)], stop);
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    /// <summary>Counts rows as they come: a line's end within quotation marks ends none.</summary>
    private sealed class ComeRows(Action<int>? tell)
    {
        private bool _isQuoted;
        private int _rows;

        public void Count(ReadOnlySpan<char> some)
        {
            foreach (var letter in some)
            {
                if (letter == '"') _isQuoted = !_isQuoted;
                else if (letter == '\n' && !_isQuoted) _rows++;
            }

            tell?.Invoke(_rows);
        }
    }
}
