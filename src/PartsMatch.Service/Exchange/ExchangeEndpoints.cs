using Microsoft.Net.Http.Headers;
using PartsMatch.Service.Access;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Exchange.Lists;
using PartsMatch.Service.Hosting;
using PartsMatch.Store;

namespace PartsMatch.Service.Exchange;

/// <summary>The catalogue's tables for programs: GET /export/{kind}.csv, POST /import/{kind}, and lists of old parts, POST /cross-reference. docs/api.md describes them.</summary>
internal static class ExchangeEndpoints
{
    public static IServiceCollection AddExchange(this IServiceCollection services)
    {
        services.AddOptions<ExchangeLimits>().BindConfiguration(ExchangeLimits.Section);
        services.AddOptions<ListLimits>().BindConfiguration(ListLimits.Section);
        return services.AddSingleton<ListEndpoint>().AddSingleton<CatalogueImport>().AddSingleton<ImportPlaces>().AddSingleton<ImportEndpoint>();
    }

    public static void MapExchange(this WebApplication app)
    {
        app.MapGet("/export/{kind}.csv", ExportAsync).WithMetadata(new ForPrograms());
        app.MapPost("/import/{kind}", (HttpContext context, string kind, ImportEndpoint endpoint) =>
            CatalogueTable.Find(kind) is { } table ? endpoint.AnswerAsync(context, table) : NoSuchTableAsync(context, kind)).WithMetadata(new ForPrograms());
        app.MapPost("/cross-reference", (HttpContext context, ListEndpoint endpoint) => endpoint.AnswerAsync(context)).WithMetadata(new ForPrograms());
    }

    private static async Task ExportAsync(HttpContext context, string kind, PartStore store)
    {
        if (CatalogueTable.Find(kind) is not { } table)
        {
            await NoSuchTableAsync(context, kind);
            return;
        }

        var headers = context.Response.Headers;
        headers.ContentType = "text/csv; charset=utf-8; header=present";
        headers.ContentDisposition = new ContentDispositionHeaderValue("attachment") { FileName = table.FileName }.ToString();
        headers.CacheControl = "no-store";
        await CatalogueExport.WriteAsync(table, store, context.Response.Body, context.RequestAborted);
    }

    private static Task NoSuchTableAsync(HttpContext context, string kind) => Problems.WriteAsync(
        context, StatusCodes.Status404NotFound, Codes.NoSuchPage, $"There is no table “{kind}”. The tables are: {string.Join(", ", CatalogueTable.All.Select(table => table.Kind))}.");
}
