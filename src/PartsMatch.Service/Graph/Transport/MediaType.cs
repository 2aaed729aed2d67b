using Microsoft.Net.Http.Headers;

namespace PartsMatch.Service.Graph.Transport;

/// <summary>The two media types in which a GraphQL response may travel.</summary>
internal static class MediaType
{
    public const string Response = "application/graphql-response+json";
    public const string Json = "application/json";

    /// <summary>The one that the client likes best, or null when it takes neither. Clients that do not say, or say */*, predate the newer type and get application/json.</summary>
    public static string? Negotiate(HttpRequest request)
    {
        if (request.Headers.Accept.Count == 0) return Json;
        if (request.Headers.Accept is [Response]) return Response;
        if (!MediaTypeHeaderValue.TryParseList(request.Headers.Accept, out var accepted)) return null;
        var (newer, plain) = (Liking(accepted, Response), Liking(accepted, Json));
        return (newer, plain) switch
        {
            ( <= 0, <= 0) => null,
            _ when newer > plain || (Exactly(newer, plain) && accepted.Any(type => Names(type, Response))) => Response,
            _ => Json,
        };
    }

    /// <summary>Whether a body is said to be JSON in UTF-8, which is also the only JSON there is.</summary>
    public static bool IsJson(string? contentType) =>
        contentType == Json || (MediaTypeHeaderValue.TryParse(contentType, out var type) && Names(type, Json) && (!type.Charset.HasValue || IsUtf8(type)));

    /// <summary>The weight of the most specific range that covers the type; 0 when none does.</summary>
    /// <remarks>By hand: the framework's own IsSubsetOf takes every +json for application/json.</remarks>
    private static double Liking(IList<MediaTypeHeaderValue> accepted, string mediaType) => accepted
        .Select(range => (range, specific: Names(range, mediaType) ? 3 : Names(range, "application/*") ? 2 : Names(range, "*/*") ? 1 : 0))
        .Where(pair => pair.specific > 0)
        .OrderByDescending(pair => pair.specific)
        .Select(pair => pair.range.Quality ?? 1)
        .FirstOrDefault();

    private static bool Exactly(double one, double other) => one.Equals(other);

    private static bool Names(MediaTypeHeaderValue type, string name) => type.MediaType.Equals(name, StringComparison.OrdinalIgnoreCase);

    private static bool IsUtf8(MediaTypeHeaderValue type) => HeaderUtilities.RemoveQuotes(type.Charset).Equals("utf-8", StringComparison.OrdinalIgnoreCase);
}
