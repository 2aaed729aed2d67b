using System.Globalization;
using System.Net;
using System.Text.Json;

namespace PartsMatch.Service.Tests.Support;

/// <summary>What came back: status, media type, headers and body.</summary>
internal sealed record Answered(HttpStatusCode Status, string? MediaType, IReadOnlyDictionary<string, string> Headers, string Body)
{
    private JsonElement Json => JsonDocument.Parse(Body).RootElement;

    /// <summary>The codes of the errors, in their order.</summary>
    public IReadOnlyList<string> Codes => Errors("code");

    /// <summary>The places of the errors, in their order; empty texts where there is none.</summary>
    public IReadOnlyList<string> Places => Errors("at");

    public static async Task<Answered> OfAsync(HttpResponseMessage response) => new(
        response.StatusCode,
        response.Content.Headers.ContentType?.MediaType,
        response.Headers.Concat(response.Content.Headers).ToDictionary(header => header.Key, header => string.Join(", ", header.Value), StringComparer.OrdinalIgnoreCase),
        await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));

    public bool Has(string member) => Json.TryGetProperty(member, out _);

    /// <summary>The value at a path such as data.parts.edges.0.node.number.</summary>
    public JsonElement At(string path) => path.Split('.').Aggregate(Json, (at, step) => at.ValueKind == JsonValueKind.Array ? at[int.Parse(step, CultureInfo.InvariantCulture)] : at.GetProperty(step));

    public string Text(string path) => At(path).ToString();

    public IReadOnlyList<string> All(string listPath, string path) => [.. Enumerable.Range(0, At(listPath).GetArrayLength()).Select(index => Text($"{listPath}.{index}.{path}"))];

    private IReadOnlyList<string> Errors(string extension) => Json.TryGetProperty("errors", out var errors)
        ? [.. errors.EnumerateArray().Select(error => error.TryGetProperty("extensions", out var extensions) && extensions.TryGetProperty(extension, out var value) ? value.GetString()! : string.Empty)]
        : [];
}
