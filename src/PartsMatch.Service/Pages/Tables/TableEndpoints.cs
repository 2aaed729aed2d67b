using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Extensions.Options;
using PartsMatch.Service.Access;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Exchange;
using PartsMatch.Service.Pages.Errors;
using PartsMatch.Service.Pages.Fields;

namespace PartsMatch.Service.Pages.Tables;

/// <summary>The catalogue's tables, out and in: a file is previewed first, and its good rows are taken only when asked.</summary>
internal static class TableEndpoints
{
    public const string Path = "/tables";
    public const string Kind = "kind";
    public const string File = "file";
    public const string Refused = "refused.csv";

    /// <summary>The page looks again by itself, without script (HTML standard, "shared declarative refresh steps"), until there is something to read, and not for one who asked it to stand still (WCAG 2.2, 2.2.2).</summary>
    private const string Refresh = "Refresh";
    private const string LookAgainAfter = "2";
    private const string SendAgain = "This page was open for too long, or you signed in anew meanwhile. Choose the file again, and send it once more.";

    private const string NothingDone = "This page was open for too long, or you signed in anew meanwhile. Nothing was done; if it is still meant, send it again.";

    public static void Map(WebApplication app)
    {
        app.MapGet(Path, () => PageSetup.Page<TablesPage>(new TablesModel(Complaints.None)));
        app.MapPost(Path, SendAsync).WithMetadata(new NeedsKey());
        app.MapGet($"{Path}/{{name}}", (HttpContext context, string name, ImportJobs jobs) =>
            jobs.Find(name, Caller.Of(context).KeyLabel!) is { } job ? ShowAsync(context, name, job) : Task.FromResult(Gone())).WithMetadata(new NeedsKey());
        app.MapGet($"{Path}/{{name}}/{Refused}", (HttpContext context, string name, ImportJobs jobs) =>
            jobs.Find(name, Caller.Of(context).KeyLabel!)?.Done is { } done ? RefusedAsync(context, done) : Task.FromResult(Gone())).WithMetadata(new NeedsKey());
        app.MapPost($"{Path}/{{name}}", TakeAsync).WithMetadata(new NeedsKey());
    }

    private static async Task<IResult> SendAsync(HttpContext context, ImportJobs jobs, ImportPlaces places, IAntiforgery antiforgery, IOptions<ExchangeLimits> limits)
    {
        using var place = places.Take();
        if (place is null) return Busy(string.Empty);
        var most = limits.Value.Bytes;
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } server) server.MaxRequestBodySize = most + FormOverhead;
        context.Features.Set<IFormFeature>(new FormFeature(context.Request, new FormOptions { MultipartBodyLengthLimit = most + FormOverhead }));
        var form = await Typed.ReadAsync(context);
        if (!await antiforgery.IsRequestValidAsync(context)) return Refuse(form[Kind], File, Codes.RequestMalformed, SendAgain, StatusCodes.Status400BadRequest);
        if (CatalogueTable.Find(form[Kind]) is not { } table) return Refuse(form[Kind], Kind, Codes.NoSuchPage, "Choose which table it is.");
        if (context.Request.Form.Files.GetFile(File) is not { Length: > 0 } sent) return Refuse(form[Kind], File, Codes.Empty, "Choose a file: a table of comma-separated values in UTF-8.");
        if (sent.Length > most) return Refuse(form[Kind], File, Codes.RequestTooLarge, FormattableString.Invariant($"A file has at most {most} bytes. Split it, and repeat the header."));
        using var bytes = new MemoryStream((int)sent.Length);
        await sent.CopyToAsync(bytes, context.RequestAborted);
        return jobs.Begin(table, bytes.GetBuffer().AsMemory(0, (int)bytes.Length), Caller.Of(context).KeyLabel!) is { } name
            ? new SeeOther($"{Path}/{name}")
            : Busy(table.Kind);
    }

    private static RazorComponentResult<TablesPage> Busy(string chosen) => Refuse(chosen, File, Codes.TooSlow, "Other files are being read at the moment. Send it again in a minute.", StatusCodes.Status503ServiceUnavailable);

    /// <summary>What stands round a file in a form: names, boundaries, the token.</summary>
    private const int FormOverhead = 64 * 1024;

    private static async Task<IResult> TakeAsync(HttpContext context, string name, ImportJobs jobs, IAntiforgery antiforgery)
    {
        if (jobs.Find(name, Caller.Of(context).KeyLabel!) is not { } job) return Gone();
        if (!await antiforgery.IsRequestValidAsync(context)) return PageSetup.Page<ImportPage>(new ImportModel(name, job, job.Done is { } done ? (await done).Value : null, [new(Codes.RequestMalformed, string.Empty, NothingDone)]), StatusCodes.Status400BadRequest);
        job.Take();
        return new SeeOther($"{Path}/{name}");
    }

    private static async Task<IResult> ShowAsync(HttpContext context, string name, ImportJob job)
    {
        var isStill = context.Request.Query.ContainsKey(ImportModel.Still);
        if (job.Come is not null && !isStill) context.Response.Headers[Refresh] = LookAgainAfter;
        var answer = job.Done is { } done ? await done : null;
        return PageSetup.Page<ImportPage>(new ImportModel(name, job, answer?.Value, answer?.Refusals ?? []) { IsStill = isStill }, answer?.Refusals.Count > 0 ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK);
    }

    private static async Task<IResult> RefusedAsync(HttpContext context, Task<Answer<ImportReport>> done)
    {
        if ((await done).Value is not { } report) return Gone();
        context.Response.Headers.CacheControl = "no-store";
        return Results.Stream(
            async target =>
            {
                await using var text = new StreamWriter(target, leaveOpen: true);
                await report.Refused.WriteAsync(text, context.RequestAborted);
            },
            "text/csv; charset=utf-8; header=present",
            Refused);
    }

    private static IResult Gone() => ErrorModel.Page(StatusCodes.Status404NotFound, "This file is not kept any more: files are kept for half an hour, and only for whoever sent them. What was taken of it is in the catalogue. Send it again to see what is left.");

    private static RazorComponentResult<TablesPage> Refuse(string chosen, string input, string code, string message, int status = StatusCodes.Status422UnprocessableEntity) =>
        PageSetup.Page<TablesPage>(new TablesModel(Complaints.Of([new(code, input, message)]), chosen), status);
}
