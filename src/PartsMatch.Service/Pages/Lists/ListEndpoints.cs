using System.Text;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Extensions.Options;
using Microsoft.Net.Http.Headers;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Counter.Lists;
using PartsMatch.Service.Exchange.Lists;
using PartsMatch.Service.Pages.Fields;

namespace PartsMatch.Service.Pages.Lists;

/// <summary>Many old parts at once: a file or pasted lines in, the same list with replacements out, as POST /cross-reference answers it.</summary>
internal static class ListEndpoints
{
    public const string Path = "/lists";
    public const string File = "file";
    public const string Text = "text";
    public const string First = "first";

    private const string AnswerName = "replacements.csv";

    /// <summary>What stands round a file in a form: names, boundaries, the token.</summary>
    private const int FormOverhead = 64 * 1024;

    public static void Map(WebApplication app)
    {
        app.MapGet(Path, (IOptions<ListLimits> limits) => PageSetup.Page<ListPage>(new ListModel(limits.Value, Complaints.None)));
        app.MapPost(Path, SendAsync);
    }

    private static async Task<IResult> SendAsync(HttpContext context, ListEndpoint lists, IOptions<ListLimits> limits)
    {
        var most = limits.Value.Bytes;
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } server) server.MaxRequestBodySize = most + FormOverhead;
        context.Features.Set<IFormFeature>(new FormFeature(context.Request, new FormOptions { MultipartBodyLengthLimit = most + FormOverhead }));
        var form = await Typed.ReadAsync(context);
        var model = new ListModel(limits.Value, Complaints.None) { Text = form[Text], First = int.TryParse(form[First], out var first) && first is >= 1 and <= CrossReference.MostParts ? first : 1 };
        if (form.IsOnlyShown) return PageSetup.Page<ListPage>(model);
        var (input, read) = context.Request.Form.Files.GetFile(File) is { Length: > 0 } sent ? (File, () => ReadAsync(sent, most, context.RequestAborted)) : (Text, (Func<Task<ReadOnlyMemory<byte>?>>)(() => ReadAsync(form[Text], most)));
        if (input == Text && form[Text].Length == 0) return Refused(model, [new(Codes.Empty, context.Request.Form.ContainsKey(Text) ? Text : File, "There is no list yet: choose a file, or paste lines, the first of which names the columns.")]);
        context.Response.Headers.ContentDisposition = new ContentDispositionHeaderValue("attachment") { FileName = AnswerName }.ToString();
        var refusals = await lists.AnswerAsync(context, read, model.First);
        if (refusals.Count == 0) return Results.Empty;
        context.Response.Headers.Remove(HeaderNames.ContentDisposition);
        return Refused(model, [.. refusals.Select(refusal => refusal with { At = input })]);
    }

    private static async Task<ReadOnlyMemory<byte>?> ReadAsync(IFormFile sent, int most, CancellationToken stop)
    {
        if (sent.Length > most) return null;
        using var bytes = new MemoryStream((int)sent.Length);
        await sent.CopyToAsync(bytes, stop);
        return bytes.GetBuffer().AsMemory(0, (int)bytes.Length);
    }

    private static Task<ReadOnlyMemory<byte>?> ReadAsync(string lines, int most)
    {
        ReadOnlyMemory<byte> bytes = Encoding.UTF8.GetBytes(lines);
        return Task.FromResult(bytes.Length <= most ? bytes : (ReadOnlyMemory<byte>?)null);
    }

    private static RazorComponentResult<ListPage> Refused(ListModel model, IReadOnlyList<Refusal> refusals) => PageSetup.Page<ListPage>(model with { Complaints = Complaints.Of(refusals) }, ListEndpoint.StatusOf(refusals));
}
