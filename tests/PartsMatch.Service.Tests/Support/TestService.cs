using System.Net;
using System.Net.Http.Headers;
using System.Net.Http.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using PartsMatch.Service.Access;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Tests.Support;

/// <summary>A whole service on a data folder of its own, asked through HTTP.</summary>
internal sealed class TestService : IAsyncDisposable
{
    /// <summary>On a request: the address it is to seem to come from. Without it, requests come from this machine.</summary>
    public const string FromHeader = "Test-From";

    /// <summary>On a request: something past the door fails with this text.</summary>
    public const string FailHeader = "Test-Fail";

    private readonly TestFolder _data = new();
    private readonly TestFolder _seed = new();
    private readonly WebApplication _app;

    private TestService(string[] settings, TimeProvider? clock, Action<string>? inDataFolder)
    {
        Seed.WriteTo(_seed);
        inDataFolder?.Invoke(_data.Path);
        _app = ServiceHost.Build([$"--Data:Folder={_data.Path}", $"--Data:SeedFolder={_seed.Path}", .. settings], builder =>
        {
            builder.WebHost.UseTestServer();
            builder.Logging.ClearProviders().AddProvider(Log);
            builder.Services.AddSingleton<IStartupFilter>(new RemoteAddress());
            if (clock is not null) builder.Services.AddSingleton(clock);
        });
    }

    public RecordedLog Log { get; } = new();

    public HttpClient Client { get; private set; } = null!;

    public IServiceProvider Services => _app.Services;

    public string DataFolder => _data.Path;

    public string Key { get; private set; } = null!;

    public static Task<TestService> StartAsync(params string[] settings) => StartAsync(clock: null, inDataFolder: null, settings);

    /// <summary>With a clock of the test's, or files that lie in the data folder before the start.</summary>
    public static async Task<TestService> StartAsync(TimeProvider? clock, Action<string>? inDataFolder, params string[] settings)
    {
        var service = await StartWithoutKeyAsync(clock, inDataFolder, settings);
        service.Key = (await service.Services.GetRequiredService<KeyRing>().MakeFirstAsync())!;
        return service;
    }

    /// <summary>One that nobody has a key of.</summary>
    public static async Task<TestService> StartWithoutKeyAsync(TimeProvider? clock, Action<string>? inDataFolder, params string[] settings)
    {
        var service = new TestService(settings, clock, inDataFolder);
        await ServiceHost.PrepareAsync(service._app);
        service._app.Use((context, next) => context.Request.Headers.TryGetValue(FailHeader, out var text) ? throw new InvalidOperationException(text) : next(context));
        await service._app.StartAsync(TestContext.Current.CancellationToken);
        service.Client = service._app.GetTestClient();
        return service;
    }

    /// <summary>A query from this machine, without a key.</summary>
    public Task<Answered> AskAsync(string query, object? variables = null) => PostAsync(query, variables, key: null);

    /// <summary>A mutation, with the key.</summary>
    public Task<Answered> WriteAsync(string query, object? variables = null) => PostAsync(query, variables, Key);

    public async Task<Answered> SendAsync(HttpRequestMessage request)
    {
        using var response = await Client.SendAsync(request, TestContext.Current.CancellationToken);
        return await Answered.OfAsync(response);
    }

    public async ValueTask DisposeAsync()
    {
        await _app.DisposeAsync();
        _data.Dispose();
        _seed.Dispose();
    }

    private Task<Answered> PostAsync(string query, object? variables, string? key)
    {
        var request = new HttpRequestMessage(HttpMethod.Post, "/graphql") { Content = JsonContent.Create(new { query, variables }) };
        if (key is not null) request.Headers.Authorization = new AuthenticationHeaderValue("Bearer", key);
        return SendAsync(request);
    }

    private sealed class RemoteAddress : IStartupFilter
    {
        public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) => app =>
        {
            app.Use((context, following) =>
            {
                context.Connection.RemoteIpAddress = context.Request.Headers.TryGetValue(FromHeader, out var from) ? IPAddress.Parse(from.ToString()) : IPAddress.Loopback;
                return following(context);
            });
            next(app);
        };
    }
}
