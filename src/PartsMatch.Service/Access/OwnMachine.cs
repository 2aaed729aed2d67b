using System.Net;
using Microsoft.Net.Http.Headers;

namespace PartsMatch.Service.Access;

/// <summary>Is a request made by a person or program on this very machine, of its own will?</summary>
/// <remarks>
/// The address alone does not tell. A web page can have its name resolve to 127.0.0.1 (DNS rebinding): then the Host header is that name.
/// It can send a request across sites: then the browser says so in Origin or Sec-Fetch-Site. A link that a person follows, as from a message in web mail, crosses sites too:
/// it opens a page in a tab of its own, of which the site that it came from sees nothing. So it goes through, where the browser says that it is just that (Sec-Fetch-Mode, Sec-Fetch-Dest: W3C Fetch Metadata),
/// by GET, which changes nothing here, and to a page: a frame, a picture, a script's request and an address for programs stay refused. And a proxy on this machine hands on
/// other machines' requests: then it usually says so in a forwarding header. Whatever such a header says is not believed; that it is there is enough.
/// </remarks>
internal static class OwnMachine
{
    private static readonly string[] Forwarding = ["Forwarded", "X-Forwarded-For", "X-Forwarded-Host", "X-Real-IP", "Via"];

    public static bool Asks(HttpContext context)
    {
        var request = context.Request;
        return context.Connection.RemoteIpAddress is { } address
            && IPAddress.IsLoopback(address)
            && IsLoopbackName(request.Host.Host)
            && !Forwarding.Any(request.Headers.ContainsKey)
            && IsOwnOrigin(request)
            && (IsSameSite(request.Headers["Sec-Fetch-Site"].ToString()) || IsLinkToPage(context));
    }

    private static bool IsLoopbackName(string host) =>
        host.Equals("localhost", StringComparison.OrdinalIgnoreCase) || (IPAddress.TryParse(host.Trim('[', ']'), out var address) && IPAddress.IsLoopback(address));

    private static bool IsOwnOrigin(HttpRequest request) =>
        request.Headers[HeaderNames.Origin] is { Count: 0 } || request.Headers[HeaderNames.Origin].ToString().Equals($"{request.Scheme}://{request.Host}", StringComparison.OrdinalIgnoreCase);

    private static bool IsLinkToPage(HttpContext context) =>
        HttpMethods.IsGet(context.Request.Method)
        && context.Request.Headers["Sec-Fetch-Mode"] == "navigate"
        && context.Request.Headers["Sec-Fetch-Dest"] == "document"
        && context.GetEndpoint()?.Metadata.GetMetadata<ForPrograms>() is null;

    private static bool IsSameSite(string fetchSite) => fetchSite is "" or "none" or "same-origin";
}
