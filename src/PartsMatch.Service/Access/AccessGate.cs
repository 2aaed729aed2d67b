using Microsoft.Extensions.Options;
using Microsoft.Net.Http.Headers;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Hosting;
using PartsMatch.Service.Pages.SignIn;

namespace PartsMatch.Service.Access;

/// <summary>Lets a request through to reading, and says who makes it. What writes asks <see cref="Caller"/> for a key.</summary>
internal sealed class AccessGate(RequestDelegate next, KeyRing keys, IOptions<AccessSettings> settings)
{
    private const string Scheme = "Bearer ";
    private const string Wrong = "This key is not one of this service's.";
    private const string Needed = "Reading from another machine needs a key. Send it as: Authorization: Bearer <key>.";

    public async Task InvokeAsync(HttpContext context)
    {
        var shown = context.Request.Headers.Authorization;
        var caller = new Caller(shown.Count == 0 ? null : LabelOf(shown.ToString()), SignInCookie.LabelIn(context.User));
        context.Features.Set(caller);
        if (shown.Count > 0 && caller.Bearer is null)
        {
            await RefuseAsync(context, Codes.KeyWrong, Wrong);
        }
        else if (caller.KeyLabel is not null || MayGoOnWithout(context))
        {
            await next(context);
        }
        else if (!Browser.Asks(context))
        {
            await RefuseAsync(context, Codes.KeyNeeded, Needed);
        }
        else if (LeadsToSigningIn(context.Request) is { } link)
        {
            context.Response.StatusCode = StatusCodes.Status303SeeOther;
            context.Response.Headers.Location = link;
        }
        else
        {
            context.Response.Headers[HeaderNames.WWWAuthenticate] = "Bearer";
            await SignInEndpoints.AskAsync(context);
        }
    }

    /// <summary>For whoever follows a link to a page; null for a form, and for an address so long that the page has to ask in its own place.</summary>
    private static string? LeadsToSigningIn(HttpRequest request) =>
        (HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method)) && SignInLink.For($"{request.Path}{request.QueryString}") is var link && link != SignInLink.Path ? link : null;

    private string? LabelOf(string header) =>
        header.StartsWith(Scheme, StringComparison.OrdinalIgnoreCase) ? keys.LabelOf(header[Scheme.Length..].Trim()) : null;

    private bool MayGoOnWithout(HttpContext context)
    {
        var metadata = context.GetEndpoint()?.Metadata;
        return metadata?.GetMetadata<OpenToAll>() is not null
            || (metadata?.GetMetadata<NeedsKey>() is null
                && (settings.Value.OpenReads || (!settings.Value.KeysForAllReads && OwnMachine.Asks(context))));
    }

    private static Task RefuseAsync(HttpContext context, string code, string message)
    {
        context.Response.Headers[HeaderNames.WWWAuthenticate] = "Bearer";
        var writer = context.GetEndpoint()?.Metadata.GetMetadata<RefusalWriter>()?.WriteAsync ?? Problems.WriteAsync;
        return writer(context, StatusCodes.Status401Unauthorized, code, message);
    }
}
