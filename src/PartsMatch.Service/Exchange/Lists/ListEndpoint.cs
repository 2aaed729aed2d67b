using System.Globalization;
using System.Text;
using Microsoft.Extensions.Options;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Counter.Lists;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Exchange.Lists;

/// <summary>POST /cross-reference: a list of old parts in, the same list with replacements out, row by row as they are known.</summary>
internal sealed class ListEndpoint(Judgements judgements, IOptions<ListLimits> limits) : IDisposable
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
        else if (!await _places.WaitAsync(0, context.RequestAborted))
        {
            context.Response.Headers.RetryAfter = "30";
            await Problems.WriteAsync(context, StatusCodes.Status503ServiceUnavailable, Codes.TooSlow, FormattableString.Invariant($"As many lists are being answered at the moment as are answered at once ({limits.Value.AtOnce}). Nothing was done: send it again in half a minute."));
        }
        else
        {
            try
            {
                await ReadAsync(context, first, from);
            }
            finally
            {
                _places.Release();
            }
        }
    }

    public void Dispose() => _places.Dispose();

    private async Task ReadAsync(HttpContext context, int first, int from)
    {
        var now = judgements.Now;
        if (await CsvBody.ReadAsync(context, limits.Value.Bytes) is not { } bytes)
        {
            await Problems.WriteAsync(context, StatusCodes.Status413PayloadTooLarge, Codes.RequestTooLarge, FormattableString.Invariant($"A list has at most {limits.Value.Bytes} bytes. Split it, and repeat the header."));
            return;
        }

        var list = ListFile.Open(bytes, limits.Value, number => now.Shelf.Find(number) is not null);
        if (list.IsGiven) await WriteAsync(context, now, list.Value, first, from);
        else await RefuseAsync(context, list.Refusals);
    }

    private async Task WriteAsync(HttpContext context, CounterNow now, ListFile list, int first, int from)
    {
        var stop = context.RequestAborted;
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

    private static Task RefuseAsync(HttpContext context, IReadOnlyList<Refusal> refusals) => Problems.WriteAsync(
        context,
        refusals[0].Code == Codes.RequestTooLarge ? StatusCodes.Status413PayloadTooLarge : StatusCodes.Status422UnprocessableEntity,
        refusals[0].Code,
        string.Join(' ', refusals.Select(refusal => refusal.Message)),
        KeyValuePair.Create("errors", (object?)refusals.Select(RowComplaint.Of).ToList()));

    /// <summary>A whole number of the address; null when what stands there is none.</summary>
    private static int? Whole(HttpContext context, string name, int usual)
    {
        var text = context.Request.Query[name].ToString();
        return text.Length == 0 ? usual : int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
    }
}
