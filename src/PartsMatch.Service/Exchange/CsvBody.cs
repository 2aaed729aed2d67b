using Microsoft.AspNetCore.Http.Features;
using Microsoft.Net.Http.Headers;

namespace PartsMatch.Service.Exchange;

/// <summary>A table that is sent as a request's body.</summary>
internal static class CsvBody
{
    public static bool IsCsv(string? contentType) =>
        MediaTypeHeaderValue.TryParse(contentType, out var type)
        && type.MediaType.Equals("text/csv", StringComparison.OrdinalIgnoreCase)
        && (!type.Charset.HasValue || HeaderUtilities.RemoveQuotes(type.Charset).Equals("utf-8", StringComparison.OrdinalIgnoreCase));

    /// <summary>The body, unless it is longer than a file may be.</summary>
    public static async Task<ReadOnlyMemory<byte>?> ReadAsync(HttpContext context, int most)
    {
        if (context.Request.ContentLength > most) return null;
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } server) server.MaxRequestBodySize = null;
        var body = new MemoryStream((int)(context.Request.ContentLength ?? 0));
        var some = new byte[81_920];
        for (int length; (length = await context.Request.Body.ReadAsync(some, context.RequestAborted)) > 0;)
        {
            if (body.Length + length > most) return null;
            body.Write(some, 0, length);
        }

        return body.GetBuffer().AsMemory(0, (int)body.Length);
    }
}
