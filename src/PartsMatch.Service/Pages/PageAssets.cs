using System.Collections.Frozen;
using System.Security.Cryptography;
using Microsoft.AspNetCore.Http.Features;

namespace PartsMatch.Service.Pages;

/// <summary>Stylesheets and the mark: part of the program, so that a page never asks another server for anything. An address holds the content's hash and may be kept for ever.</summary>
internal static class PageAssets
{
    private const string Folder = "pages/";
    private const string KeepForEver = "public, max-age=31536000, immutable";

    private static readonly FrozenDictionary<string, Asset> ByAddress = Load().ToFrozenDictionary(asset => asset.Address, StringComparer.Ordinal);

    /// <summary>The stylesheets' addresses, in order.</summary>
    public static IReadOnlyList<string> Stylesheets { get; } = [.. ByAddress.Values.Where(asset => asset.Type == "text/css").OrderBy(asset => asset.Name, StringComparer.Ordinal).Select(asset => asset.Address)];

    public static string Mark { get; } = ByAddress.Values.First(asset => asset.Name == "mark.svg").Address;

    public static void Map(WebApplication app) => app.MapGet("/assets/{**name}", (HttpContext context) =>
    {
        if (!ByAddress.TryGetValue(context.Request.Path.Value!, out var asset)) return Results.NotFound();
        context.Response.Headers.CacheControl = KeepForEver;
        // Packed over TLS as well: there is no secret in it.
        if (context.Features.Get<IHttpsCompressionFeature>() is { } packing) packing.Mode = HttpsCompressionMode.Compress;
        return Results.Bytes(asset.Content, $"{asset.Type}; charset=utf-8");
    }).WithMetadata(new Access.OpenToAll());

    private static IEnumerable<Asset> Load()
    {
        var assembly = typeof(PageAssets).Assembly;
        foreach (var resource in assembly.GetManifestResourceNames().Where(name => name.StartsWith(Folder, StringComparison.Ordinal)))
        {
            using var stream = assembly.GetManifestResourceStream(resource)!;
            using var content = new MemoryStream();
            stream.CopyTo(content);
            var bytes = content.ToArray();
            var name = resource[Folder.Length..];
            yield return new(name, $"/assets/{Convert.ToHexStringLower(SHA256.HashData(bytes))[..12]}/{name}", name.EndsWith(".svg", StringComparison.Ordinal) ? "image/svg+xml" : "text/css", bytes);
        }
    }

    private sealed record Asset(string Name, string Address, string Type, byte[] Content);
}
