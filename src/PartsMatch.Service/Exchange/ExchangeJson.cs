using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace PartsMatch.Service.Exchange;

/// <summary>How an import's report travels: names in camel case, states as words, quotes and µ as themselves. A line each when how far it has come is told too.</summary>
internal static class ExchangeJson
{
    public const string Lines = "application/x-ndjson";

    public static JsonSerializerOptions Options { get; } = new(JsonSerializerDefaults.Web)
    {
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
    };
}
