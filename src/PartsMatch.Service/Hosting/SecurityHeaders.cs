namespace PartsMatch.Service.Hosting;

/// <summary>What browsers are told about every answer. A page that needs more sets its own policy.</summary>
internal static class SecurityHeaders
{
    public static void UseSecurityHeaders(this WebApplication app) => app.Use((context, next) =>
    {
        var headers = context.Response.Headers;
        headers.XContentTypeOptions = "nosniff";
        headers.ContentSecurityPolicy = "default-src 'none'; style-src 'self'; img-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";
        // Nothing to other servers. Not no-referrer: with it a browser sends its own forms from the origin "null", which the door rightly refuses.
        headers["Referrer-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        return next(context);
    });
}
