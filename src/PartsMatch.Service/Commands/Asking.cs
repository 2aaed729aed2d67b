using System.Net.Http.Headers;
using System.Runtime;
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

    private Asking(string address, WebApplication? own, AuthenticationHeaderValue? key)
    {
        _own = own;
        _client = new() { BaseAddress = new(address) };
        _client.DefaultRequestHeaders.Authorization = key;
    }

    /// <summary>Opens a service to ask and asks it; what keeps it from answering is said in a sentence.</summary>
    public static Task<int> WithServiceAsync(string? folder, Func<Ask, Task<int>> use, TextWriter errors, CancellationToken stop) =>
        WithClientAsync(folder, client => use((query, variables, cancel) => AskAsync(client, query, variables, cancel)), errors, stop);

    /// <summary>As above, for what has an address of its own.</summary>
    public static Task<int> WithClientAsync(string? folder, Func<HttpClient, Task<int>> use, TextWriter errors, CancellationToken stop) => Serving.OrRefuseAsync(errors, async () =>
    {
        await using var service = await OpenAsync(folder, errors, stop);
        try
        {
            return await use(service._client);
        }
        catch (Exception unanswered) when (unanswered is HttpRequestException or HttpIOException or JsonException)
        {
            await errors.WriteLineAsync($"The service at {service._client.BaseAddress} does not answer. If it has just stopped, ask again.");
            return ExitCode.ServiceUnreachable;
        }
    });

    /// <summary>Where the running service wants a key for reading too, this is how a command shows it.</summary>
    /// <exception cref="StartRefusedException">The text can be nobody's key.</exception>
    internal static AuthenticationHeaderValue? KeyOf(string? text)
    {
        if (string.IsNullOrEmpty(text)) return null;
        return text.All(letter => letter is > ' ' and <= '~')
            ? new("Bearer", text)
            : throw new StartRefusedException(ExitCode.BadInput, $"{KeyVariable} holds no key: a key is one word of plain letters, digits and signs.");
    }

    private static async Task<Asking> OpenAsync(string? folder, TextWriter errors, CancellationToken stop)
    {
        var key = KeyOf(Environment.GetEnvironmentVariable(KeyVariable));
        string[] args = folder is null ? [] : [$"--data={folder}"];
        var app = ServiceHost.Build([.. args, "--urls=http://127.0.0.1:0", "--Logging:LogLevel:Default=Warning"]);
        try
        {
            if (PartStore.WhoHolds(app.Services.GetRequiredService<DataFolder>().Path) is { Address: { } address })
            {
                await app.DisposeAsync();
                return new(address, own: null, key);
            }

            // Nobody but the asker waits here: memory is tidied up at once and not beside the work, which takes a tenth off a training.
            GCSettings.LatencyMode = GCLatencyMode.Batch;
            await ServiceHost.PrepareAsync(app);
            await app.StartAsync(stop);
            var made = await app.Services.GetRequiredService<KeyRing>().MakeFirstAsync();
            if (made is not null) await errors.WriteLineAsync($"The key for writing, shown this once: {made}");
            // Who has just been shown the first key may use it at once.
            return new(OwnAddress.Of(app.Urls), app, key ?? KeyOf(made));
        }
        catch
        {
            // It holds the folder: whoever asks next must not find it in use.
            await app.DisposeAsync();
            throw;
        }
    }

    private static async Task<JsonElement> AskAsync(HttpClient client, string query, JsonObject variables, CancellationToken stop)
    {
        using var answer = await client.PostAsJsonAsync("graphql", new JsonObject { ["query"] = query, ["variables"] = variables }, stop);
        return await answer.Content.ReadFromJsonAsync<JsonElement>(stop);
    }

    public async ValueTask DisposeAsync()
    {
        _client.Dispose();
        if (_own is null) return;

        // What it still answers is left by then: nothing is taken from under it.
        await _own.StopAsync();
        await _own.DisposeAsync();
    }
}
