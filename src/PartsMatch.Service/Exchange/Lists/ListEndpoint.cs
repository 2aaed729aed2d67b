using System.Globalization;
using System.Text;
using Microsoft.Extensions.Options;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Counter.Lists;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Exchange.Lists;

/// <summary>POST /cross-reference: a list of old parts in, the same list with replacements out, row by row as they are known.</summary>
internal sealed class ListEndpoint(Judgements judgements, IOptions<ListLimits> limits, IHostApplicationLifetime lifetime) : IDisposable
{
    /// <summary>How many rows the answer will have.</summary>
    public const string RowCount = "Row-Count";

    private readonly SemaphoreSlim _places = new(limits.Value.AtOnce);

    public async Task AnswerAsync(HttpContext context)
    {
        context.Response.Headers.CacheControl = "no-store";
        if (Whole(context, "first", usual: 1) is not (>= 1 and <= CrossReference.MostParts and var first))
        {
            await Problems.WriteAsync(context, StatusCodes.Status400BadRequest, Codes.FirstOutOfRange, FormattableString.Invariant($"first is how many replacements a row is given, 1 to {CrossReference.MostParts}."));
        }
        else if (Whole(context, "from", ListFile.FirstRow) is not (>= ListFile.FirstRow and var from))
        {
            await Problems.WriteAsync(context, StatusCodes.Status400BadRequest, Codes.RequestMalformed, FormattableString.Invariant($"from is the number of a row as spreadsheets count: {ListFile.FirstRow} for the row behind the header."));
        }
        else if (!CsvBody.IsCsv(context.Request.ContentType))
        {
            await Problems.WriteAsync(context, StatusCodes.Status415UnsupportedMediaType, Codes.MediaTypeUnsupported, "Send the list as text/csv in UTF-8.");
        }
        else if (await AnswerAsync(context, () => CsvBody.ReadAsync(context, limits.Value.Bytes), first, from) is { Count: > 0 } refusals)
        {
            await RefuseAsync(context, refusals);
        }
    }

    /// <summary>Answers a list; or says all that is wrong with it as a whole, and answers nothing.</summary>
    /// <param name="context">What the answer is written to.</param>
    /// <param name="read">Reads the list; null when it is longer than a list may be. Called once there is room for it.</param>
    /// <param name="first">How many replacements a row is given.</param>
    /// <param name="from">The first row that is answered.</param>
    public async Task<IReadOnlyList<Refusal>> AnswerAsync(HttpContext context, Func<Task<ReadOnlyMemory<byte>?>> read, int first, int from = ListFile.FirstRow)
    {
        if (!await _places.WaitAsync(0, context.RequestAborted)) return [new(Codes.TooSlow, string.Empty, FormattableString.Invariant($"As many lists are being answered at the moment as are answered at once ({limits.Value.AtOnce}). Nothing was done: send it again in half a minute."))];
        try
        {
            var now = judgements.Now;
            if (await read() is not { } bytes) return [new(Codes.RequestTooLarge, string.Empty, FormattableString.Invariant($"A list has at most {limits.Value.Bytes} bytes. Split it, and repeat the header."))];
            var list = ListFile.Open(bytes, limits.Value, number => now.Shelf.Find(number) is not null);
            using var ends = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted, lifetime.ApplicationStopping);
            if (list.IsGiven) await WriteAsync(context, now, list.Value, first, from, ends.Token);
            return list.Refusals;
        }
        catch (OperationCanceledException) when (lifetime.ApplicationStopping.IsCancellationRequested)
        {
            // Whoever reads it is to see that it was cut off, and not that it is whole.
            context.Abort();
            return [];
        }
        finally
        {
            _places.Release();
        }
    }

    /// <summary>The status of an answer that refuses a list.</summary>
    public static int StatusOf(IReadOnlyList<Refusal> refusals) => refusals[0].Code switch
    {
        Codes.TooSlow => StatusCodes.Status503ServiceUnavailable,
        Codes.RequestTooLarge => StatusCodes.Status413PayloadTooLarge,
        _ => StatusCodes.Status422UnprocessableEntity,
    };

    public void Dispose() => _places.Dispose();

    private static async Task WriteAsync(HttpContext context, CounterNow now, ListFile list, int first, int from, CancellationToken stop)
    {
        var hasHeader = from == ListFile.FirstRow;
        context.Response.ContentType = $"text/csv; charset=utf-8; header={(hasHeader ? "present" : "absent")}";
        context.Response.Headers[RowCount] = Math.Max(0, list.LastRow - from + 1).ToString(CultureInfo.InvariantCulture);
        await using var text = new StreamWriter(context.Response.Body, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true);
        await using var csv = CsvText.On(text);
        if (hasHeader) await CsvText.WriteRowAsync(csv, ListColumns.Header(list.Header, first));
        await using var rows = InOrder.AnswerAsync(list.Rows(from), KeyOf, CellsOf, stop).GetAsyncEnumerator(stop);
        while (true)
        {
            // What is known is sent while the next row is waited for.
            var next = rows.MoveNextAsync();
            if (!next.IsCompleted)
            {
                await csv.FlushAsync();
                await text.FlushAsync(stop);
            }

            if (!await next) break;
            await CsvText.WriteRowAsync(csv, [.. rows.Current.Entry.Carried, .. rows.Current.Answer]);
        }

        static string KeyOf(ListRow row) => row.Old is { } old ? CrossReference.KeyOf(old) : row.Wrong;

        string[] CellsOf(ListRow row) => ListRow.Answered(row.Old is { } old ? CrossReference.Replace(now, old, first) : Replaced.Without(row.Wrong), first);
    }

    private static Task RefuseAsync(HttpContext context, IReadOnlyList<Refusal> refusals)
    {
        var status = StatusOf(refusals);
        if (status == StatusCodes.Status503ServiceUnavailable) context.Response.Headers.RetryAfter = "30";
        return Problems.WriteAsync(
            context,
            status,
            refusals[0].Code,
            string.Join(' ', refusals.Select(refusal => refusal.Message)),
            KeyValuePair.Create("errors", (object?)refusals.Select(RowComplaint.Of).ToList()));
    }

    /// <summary>A whole number of the address; null when what stands there is none.</summary>
    private static int? Whole(HttpContext context, string name, int usual)
    {
        var text = context.Request.Query[name].ToString();
        return text.Length == 0 ? usual : int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
    }
}
