using System.Text;
using System.Text.Json;
using GraphQL;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Graph.Limits;

namespace PartsMatch.Service.Graph.Transport;

/// <summary>Why a request is no GraphQL request.</summary>
internal sealed record Malformed(int Status, string Code, string Message);

/// <summary>What a request asks for: read from a query string or a JSON body, with every part's type checked.</summary>
internal sealed record GraphRequest(string Query, string? OperationName, Inputs? Variables, Inputs? Extensions)
{
    /// <summary>Said of a JSON text or name that is no text: reading it throws an <see cref="InvalidOperationException"/>.</summary>
    private const string HalfALetter = "query, operationName or a name holds half of a surrogate pair (\\uD800 to \\uDFFF by itself), which is no letter. Take it out.";

    /// <summary>Of two values under one name it would be open which is meant.</summary>
    private static readonly JsonDocumentOptions EachNameOnce = new() { AllowDuplicateProperties = false };

    public static Task<(GraphRequest? Request, Malformed? Wrong)> ReadAsync(HttpRequest request, IGraphQLTextSerializer json, QueryLimits limits) =>
        HttpMethods.IsGet(request.Method) ? Task.FromResult(FromQueryString(request, json, limits)) : FromBodyAsync(request, json, limits);

    private static (GraphRequest?, Malformed?) FromQueryString(HttpRequest request, IGraphQLTextSerializer json, QueryLimits limits)
    {
        try
        {
            return Checked(
                request.Query["query"].FirstOrDefault(),
                request.Query["operationName"].FirstOrDefault(),
                MapOf(request.Query["variables"].FirstOrDefault()),
                MapOf(request.Query["extensions"].FirstOrDefault()),
                json,
                limits);
        }
        catch (InvalidOperationException)
        {
            return Wrong(HalfALetter);
        }
        catch (JsonException)
        {
            return Wrong("variables and extensions are JSON objects with each name once, written into the address.");
        }
    }

    private static async Task<(GraphRequest?, Malformed?)> FromBodyAsync(HttpRequest request, IGraphQLTextSerializer json, QueryLimits limits)
    {
        if (!MediaType.IsJson(request.ContentType))
        {
            return (null, new(StatusCodes.Status415UnsupportedMediaType, Codes.MediaTypeUnsupported, "Send the request as application/json in UTF-8."));
        }

        if (await BodyAsync(request, limits.RequestBytes) is not { } body)
        {
            return (null, new(StatusCodes.Status413PayloadTooLarge, Codes.RequestTooLarge, $"A request may have {limits.RequestBytes} bytes."));
        }

        try
        {
            using var document = JsonDocument.Parse(body, EachNameOnce);
            return FromJson(document.RootElement, json, limits);
        }
        catch (JsonException)
        {
            return Wrong("The body is not JSON with each name once in its object.");
        }
        catch (InvalidOperationException)
        {
            return Wrong(HalfALetter);
        }
    }

    private static (GraphRequest?, Malformed?) FromJson(JsonElement root, IGraphQLTextSerializer json, QueryLimits limits)
    {
        if (root.ValueKind != JsonValueKind.Object) return Wrong("The body is one JSON object; several requests at once are not taken.");
        return Is(root, "query", JsonValueKind.String) && Is(root, "operationName", JsonValueKind.String) && Is(root, "variables", JsonValueKind.Object) && Is(root, "extensions", JsonValueKind.Object)
            ? Checked(Text(root, "query"), Text(root, "operationName"), Map(root, "variables"), Map(root, "extensions"), json, limits)
            : Wrong("query and operationName are strings; variables and extensions are objects.");
    }

    private static (GraphRequest?, Malformed?) Checked(string? query, string? operationName, string? variables, string? extensions, IGraphQLTextSerializer json, QueryLimits limits)
    {
        if (string.IsNullOrWhiteSpace(query)) return Wrong("There is no query.");
        if (Encoding.UTF8.GetByteCount(query) > limits.QueryBytes)
        {
            return (null, new(StatusCodes.Status400BadRequest, Codes.QueryTooLong, $"A query may have {limits.QueryBytes} bytes; put values into variables, and ask for less at once."));
        }

        if (variables is not null && Encoding.UTF8.GetByteCount(variables) > limits.VariablesBytes)
        {
            return (null, new(StatusCodes.Status400BadRequest, Codes.RequestTooLarge, $"The variables may have {limits.VariablesBytes} bytes."));
        }

        return (new(query, string.IsNullOrEmpty(operationName) ? null : operationName, InputsOf(variables, json), InputsOf(extensions, json)), null);
    }

    /// <summary>The body, unless it is longer than a request may be.</summary>
    private static async Task<ReadOnlyMemory<byte>?> BodyAsync(HttpRequest request, int most)
    {
        if (request.ContentLength > most) return null;
        // One byte more than there may be shows that there are more. Most bodies are far shorter than they may be, and say so.
        var body = new byte[(int)(request.ContentLength ?? most) + 1];
        var length = await request.Body.ReadAtLeastAsync(body, body.Length, throwOnEndOfStream: false, request.HttpContext.RequestAborted);
        // Not one expression: there null would be an empty memory.
        if (length > most) return null;
        return body.AsMemory(0, length);
    }

    private static string? MapOf(string? text)
    {
        if (string.IsNullOrEmpty(text)) return null;
        using var document = JsonDocument.Parse(text, EachNameOnce);
        return document.RootElement.ValueKind switch
        {
            JsonValueKind.Object => text,
            JsonValueKind.Null => null,
            _ => throw new JsonException(),
        };
    }

    private static bool Is(JsonElement root, string name, JsonValueKind kind) =>
        !root.TryGetProperty(name, out var value) || value.ValueKind == kind || (value.ValueKind == JsonValueKind.Null && name != "query");

    private static string? Text(JsonElement root, string name) => root.TryGetProperty(name, out var value) ? value.GetString() : null;

    private static string? Map(JsonElement root, string name) => root.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.Object ? value.GetRawText() : null;

    private static Inputs? InputsOf(string? map, IGraphQLTextSerializer json) => map is null ? null : json.Deserialize<Inputs>(map);

    private static (GraphRequest?, Malformed?) Wrong(string message) => (null, new(StatusCodes.Status400BadRequest, Codes.RequestMalformed, message));
}
