using System.Net.Http.Headers;
using System.Text.Json;
using System.Text.Json.Nodes;
using PartsMatch.Service.Access;
using PartsMatch.Service.Hosting;
using PartsMatch.Store;

namespace PartsMatch.Service.Commands;

/// <summary>A service to ask: the one that runs on the data folder, or else one that runs for as long as the asking takes.</summary>
internal sealed class Asking : IAsyncDisposable
{
    private const string KeyVariable = "PARTSMATCH_KEY";

    private readonly WebApplication? _own;
    private readonly HttpClient _client;

    private Asking(string address, WebApplication? own)
    {
        _own = own;
        _client = new() { BaseAddress = new(address) };

        // Where the running service wants a key for reading too, this is how a command shows it.
        if (Environment.GetEnvironmentVariable(KeyVariable) is not { Length: > 0 } key) return;
        if (!AuthenticationHeaderValue.TryParse($"Bearer {key}", out var shown)) throw new StartRefusedException(ExitCode.BadInput, $"{KeyVariable} holds no key: a key is one word.");
        _client.DefaultRequestHeaders.Authorization = shown;
    }

    /// <summary>Opens a service to ask and asks it; what keeps it from answering is said in a sentence.</summary>
    public static Task<int> WithServiceAsync(string? folder, Func<Ask, Task<int>> use, TextWriter errors, CancellationToken stop) => Serving.OrRefuseAsync(errors, async () =>
    {
        await using var service = await OpenAsync(folder, errors, stop);
        try
        {
            return await use(service.AskAsync);
        }
        catch (Exception unanswered) when (unanswered is HttpRequestException or JsonException)
        {
            await errors.WriteLineAsync($"The service at {service._client.BaseAddress} does not answer. If it has just stopped, ask again.");
            return ExitCode.ServiceUnreachable;
        }
    });

    private static async Task<Asking> OpenAsync(string? folder, TextWriter errors, CancellationToken stop)
    {
        string[] args = folder is null ? [] : ["--data", folder];
        var app = ServiceHost.Build([.. args, "--urls", "http://127.0.0.1:0", "--Logging:LogLevel:Default", "Warning"]);
        if (PartStore.WhoHolds(app.Services.GetRequiredService<DataFolder>().Path) is { Address: { } address })
        {
            await app.DisposeAsync();
            return new(address, own: null);
        }

        ServiceHost.Prepare(app);
        await app.StartAsync(stop);
        if (await app.Services.GetRequiredService<KeyRing>().MakeFirstAsync() is { } key) await errors.WriteLineAsync($"The key for writing, shown this once: {key}");
        return new(OwnAddress.Of(app.Urls), app);
    }

    private async Task<JsonElement> AskAsync(string query, JsonObject variables, CancellationToken stop)
    {
        using var answer = await _client.PostAsJsonAsync("graphql", new JsonObject { ["query"] = query, ["variables"] = variables }, stop);
        return await answer.Content.ReadFromJsonAsync<JsonElement>(stop);
    }

    public async ValueTask DisposeAsync()
    {
        _client.Dispose();
        if (_own is not null) await _own.DisposeAsync();
    }
}
