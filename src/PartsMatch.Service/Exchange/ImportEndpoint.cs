using System.Globalization;
using System.Text.Json;
using System.Threading.Channels;
using Microsoft.Extensions.Options;
using PartsMatch.Service.Access;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Exchange;

/// <summary>POST /import/{kind}: a table in, a report out; with take=true, and a key, what is good of it is written.</summary>
internal sealed class ImportEndpoint(CatalogueImport import, ImportPlaces places, IOptions<ExchangeLimits> limits)
{
    public async Task AnswerAsync(HttpContext context, CatalogueTable table)
    {
        context.Response.Headers.CacheControl = "no-store";
        if (ImportAsked.Read(context.Request.Query) is not { } asked)
        {
            await Problems.WriteAsync(context, StatusCodes.Status400BadRequest, Codes.RequestMalformed, "take and refused are true or false, and seen a whole number that a preview told.");
        }
        else if (asked.Take && Caller.Of(context).Bearer is null)
        {
            context.Response.Headers.WWWAuthenticate = "Bearer";
            await Problems.WriteAsync(context, StatusCodes.Status401Unauthorized, Codes.KeyNeeded, "Writing needs a key. Send it as: Authorization: Bearer <key>.");
        }
        else if (!CsvBody.IsCsv(context.Request.ContentType))
        {
            await Problems.WriteAsync(context, StatusCodes.Status415UnsupportedMediaType, Codes.MediaTypeUnsupported, "Send the table as text/csv in UTF-8.");
        }
        else
        {
            using var place = places.Take();
            if (place is null)
            {
                context.Response.Headers.RetryAfter = "30";
                await Problems.WriteAsync(context, StatusCodes.Status503ServiceUnavailable, Codes.TooSlow, FormattableString.Invariant($"As many files are being read at the moment as are read at once ({limits.Value.AtOnce}). Nothing was done: send it again in half a minute."));
                return;
            }

            var file = await CsvBody.ReadAsync(context, limits.Value.Bytes);
            if (file is null) await Problems.WriteAsync(context, StatusCodes.Status413PayloadTooLarge, Codes.RequestTooLarge, FormattableString.Invariant($"A file has at most {limits.Value.Bytes} bytes. Split it, and repeat the header."));
            else await ImportAsync(context, table, asked, file.Value);
        }
    }

    private async Task ImportAsync(HttpContext context, CatalogueTable table, ImportAsked asked, ReadOnlyMemory<byte> file)
    {
        var stop = context.RequestAborted;
        // The newest word is enough: nobody waits for one that was overtaken.
        var told = Channel.CreateBounded<ImportProgress>(new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropOldest });
        var progress = new Telling(told.Writer);
        var importing = asked.Take
            ? import.TakeAsync(table, file, Caller.Of(context).Bearer!, asked.Seen, progress, stop)
            : import.PreviewAsync(table, file, progress, stop);
        _ = importing.ContinueWith(_ => told.Writer.Complete(), CancellationToken.None, TaskContinuationOptions.ExecuteSynchronously, TaskScheduler.Default);
        var inLines = context.Request.Headers.Accept.Any(accept => accept?.Contains(ExchangeJson.Lines, StringComparison.OrdinalIgnoreCase) == true);
        await foreach (var come in told.Reader.ReadAllAsync(stop))
        {
            if (inLines) await WriteLineAsync(context, come);
        }

        var answer = await importing;
        if (!answer.IsGiven)
        {
            await RefuseAsync(context, answer.Refusals);
            return;
        }

        if (inLines && asked.Refused) await WriteLinesAsync(context, answer.Value.Refused.All());
        if (inLines) await WriteLineAsync(context, answer.Value);
        else await context.Response.WriteAsJsonAsync(answer.Value, ExchangeJson.Options, stop);
    }

    /// <summary>Once lines are on their way, a problem is the last of them.</summary>
    private static Task RefuseAsync(HttpContext context, IReadOnlyList<Refusal> refusals)
    {
        var (code, message) = (refusals[0].Code, string.Join(' ', refusals.Select(refusal => refusal.Message)));
        var status = code switch
        {
            Codes.StoreFailed => StatusCodes.Status503ServiceUnavailable,
            Codes.RequestTooLarge => StatusCodes.Status413PayloadTooLarge,
            _ => StatusCodes.Status422UnprocessableEntity,
        };
        var errors = refusals.Select(refusal => new RowComplaint(refusal.At, refusal.Code, refusal.Message)).ToList();
        return context.Response.HasStarted
            ? WriteLineAsync(context, new { status, detail = message, code, errors })
            : Problems.WriteAsync(context, status, code, message, KeyValuePair.Create("errors", (object?)errors));
    }

    private static async Task WriteLineAsync<T>(HttpContext context, T line)
    {
        await WriteLinesAsync(context, [line]);
        await context.Response.Body.FlushAsync(context.RequestAborted);
    }

    private static async Task WriteLinesAsync<T>(HttpContext context, IEnumerable<T> lines)
    {
        context.Response.ContentType ??= ExchangeJson.Lines;
        foreach (var line in lines)
        {
            await JsonSerializer.SerializeAsync(context.Response.Body, line, ExchangeJson.Options, context.RequestAborted);
            await context.Response.WriteAsync("\n", context.RequestAborted);
        }
    }

    private sealed class Telling(ChannelWriter<ImportProgress> told) : IProgress<ImportProgress>
    {
        public void Report(ImportProgress value) => told.TryWrite(value);
    }

    /// <summary>What the address asks for.</summary>
    private sealed record ImportAsked(bool Take, bool Refused, long? Seen)
    {
        /// <summary>Null when it is neither.</summary>
        public static ImportAsked? Read(IQueryCollection query)
        {
            var (take, refused, seen) = (query["take"].ToString(), query["refused"].ToString(), query["seen"].ToString());
            long sequence = 0;
            return take is "" or "true" or "false" && refused is "" or "true" or "false" && (seen.Length == 0 || long.TryParse(seen, NumberStyles.None, CultureInfo.InvariantCulture, out sequence))
                ? new(take == "true", refused == "true", seen.Length == 0 ? null : sequence)
                : null;
        }
    }
}
