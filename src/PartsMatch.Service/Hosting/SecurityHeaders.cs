using Microsoft.Net.Http.Headers;

namespace PartsMatch.Service.Hosting;

/// <summary>What browsers are told about every answer. A page that needs more sets its own policy.</summary>
internal static class SecurityHeaders
{
    private const string ContentPolicy = "default-src 'none'; style-src 'self'; img-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    /// <summary>At the very start of an answer: what went wrong before may have cleared the headers.</summary>
    public static void UseSecurityHeaders(this WebApplication app) => app.Use((context, next) =>
    {
        context.Response.OnStarting(() =>
        {
            var headers = context.Response.Headers;
            headers.XContentTypeOptions = "nosniff";
            headers.TryAdd(HeaderNames.ContentSecurityPolicy, ContentPolicy);
            // Not no-referrer: then a browser calls the origin of our own forms null, and they look like another site's (Fetch standard, "append a request Origin header").
            headers["Referrer-Policy"] = "same-origin";
            headers["Cross-Origin-Resource-Policy"] = "same-origin";
            return Task.CompletedTask;
        });
        return next(context);
    });
}
