using System.Net;
using System.Text.Json;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Commands;

/// <summary>A problem that the service answered, for a terminal.</summary>
internal static class Problem
{
    public static async Task<int> TellAsync(HttpResponseMessage answer, TextWriter errors, CancellationToken stop)
    {
        await using var body = await answer.Content.ReadAsStreamAsync(stop);
        using var problem = await JsonDocument.ParseAsync(body, cancellationToken: stop);
        return await TellAsync(problem.RootElement, answer.StatusCode, errors);
    }

    /// <summary>Each error on a line of its own, with the column it is about.</summary>
    public static async Task<int> TellAsync(JsonElement problem, HttpStatusCode status, TextWriter errors)
    {
        if (problem.TryGetProperty("errors", out var list))
        {
            foreach (var error in list.EnumerateArray()) await errors.WriteLineAsync(error.Text("message"));
        }
        else
        {
            await errors.WriteLineAsync(problem.Text("detail") + OfKey(problem.Text("code")));
        }

        return (int)status < 500 ? ExitCode.BadInput : ExitCode.Failed;
    }

    /// <summary>Each error of a GraphQL answer on a line of its own; null when there is none.</summary>
    public static async Task<int?> TellErrorsAsync(JsonElement answer, TextWriter errors)
    {
        if (!answer.TryGetProperty("errors", out var list)) return null;
        var exit = ExitCode.BadInput;
        foreach (var error in list.EnumerateArray())
        {
            var code = error.GetProperty("extensions").Text("code");
            if (code is Codes.StoreFailed or Codes.Internal) exit = ExitCode.Failed;
            await errors.WriteLineAsync(error.Text("message") + OfKey(code));
        }

        return exit;
    }

    private static string OfKey(string code) => code switch
    {
        Codes.KeyWrong => " It is the one in PARTSMATCH_KEY.",
        Codes.KeyNeeded => " This command takes it from PARTSMATCH_KEY.",
        _ => string.Empty,
    };
}
