using Microsoft.AspNetCore.Diagnostics;
using PartsMatch.Service.Access;

namespace PartsMatch.Service.Hosting;

/// <summary>Is it a person at a browser who asks? Then even what goes wrong is told as a page.</summary>
internal static class Browser
{
    private const string Page = "text/html";
    private const string Json = "application/json";

    /// <summary>By what is preferred (RFC 9110, 12.5.1); an address for programs has no pages whoever asks.</summary>
    public static bool Asks(HttpContext context)
    {
        // After a failure the endpoint is found with the failure only.
        var endpoint = context.GetEndpoint() ?? context.Features.Get<IExceptionHandlerFeature>()?.Endpoint;
        if (endpoint?.Metadata.GetMetadata<ForPrograms>() is not null) return false;
        var accepted = context.Request.GetTypedHeaders().Accept;
        return Wish(Page) > Wish(Json);

        double Wish(string type) => accepted.Where(one => one.MediaType.Equals(type, StringComparison.OrdinalIgnoreCase)).Select(one => one.Quality ?? 1).DefaultIfEmpty(0).Max();
    }
}
