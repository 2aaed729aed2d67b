using Microsoft.Extensions.Options;
using Microsoft.Net.Http.Headers;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Hosting;

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
        var label = shown.Count == 0 ? null : LabelOf(shown.ToString());
        if (shown.Count > 0 && label is null)
        {
            await RefuseAsync(context, Codes.KeyWrong, Wrong);
        }
        else if (label is null && !MayReadWithout(context))
        {
            await RefuseAsync(context, Codes.KeyNeeded, Needed);
        }
        else
        {
            context.Features.Set(new Caller(label));
            await next(context);
        }
    }

    private string? LabelOf(string header) =>
        header.StartsWith(Scheme, StringComparison.OrdinalIgnoreCase) ? keys.LabelOf(header[Scheme.Length..].Trim()) : null;

    private bool MayReadWithout(HttpContext context) =>
        context.GetEndpoint()?.Metadata.GetMetadata<OpenToAll>() is not null
        || settings.Value.OpenReads
        || (!settings.Value.KeysForAllReads && OwnMachine.Asks(context));

    private static Task RefuseAsync(HttpContext context, string code, string message)
    {
        context.Response.Headers[HeaderNames.WWWAuthenticate] = "Bearer";
        var writer = context.GetEndpoint()?.Metadata.GetMetadata<RefusalWriter>()?.WriteAsync ?? Problems.WriteAsync;
        return writer(context, StatusCodes.Status401Unauthorized, code, message);
    }
}
