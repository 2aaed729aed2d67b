using PartsMatch.Service.Access;
using PartsMatch.Service.Counter;
using PartsMatch.Store;

namespace PartsMatch.Service.Hosting;

/// <summary>Is the process up, and does it answer as it should? Open to all: it tells nothing else.</summary>
internal static class Health
{
    public static void Map(WebApplication app)
    {
        app.MapGet("/health/live", () => Results.Json(new { status = "live" })).WithMetadata(new OpenToAll(), new ForPrograms());
        app.MapGet("/health/ready", (Catalogues catalogues, PartStore store, IHostApplicationLifetime lifetime) => IsReady(catalogues, store, lifetime)
            ? Results.Json(new { status = "ready" })
            : Results.Json(new { status = "not ready" }, statusCode: StatusCodes.Status503ServiceUnavailable)).WithMetadata(new OpenToAll(), new ForPrograms());
    }

    /// <summary>After a failed disk it may not show a write that was kept.</summary>
    private static bool IsReady(Catalogues catalogues, PartStore store, IHostApplicationLifetime lifetime) => catalogues.IsInStep && !store.HasFailed && !lifetime.ApplicationStopping.IsCancellationRequested;
}
