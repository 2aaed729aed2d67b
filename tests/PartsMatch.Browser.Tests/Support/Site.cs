using PartsMatch.Service.Tests.Support;
using Xunit.Sdk;

[assembly: AssemblyFixture(typeof(Site))]
[assembly: Xunit.v3.Parallelization(Mode = ParallelMode.All, MaxThreads = 3)]

namespace PartsMatch.Browser.Tests.Support;

/// <summary>The whole service as its program runs it, on a free port and the demo catalogue, and one browser that visits it: made once for all tests, which only read.</summary>
public sealed class Site : IAsyncLifetime
{
    private readonly TestFolder _data = new();
    private RunningService _service = null!;
    private IPlaywright _playwright = null!;
    private IBrowser _browser = null!;

    public Uri Origin { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        var starting = RunningService.StartAsync([$"--data={_data.Path}", "--urls=http://127.0.0.1:0"]);
        _playwright = await Playwright.CreateAsync();
        _browser = await Chromium.StartAsync(_playwright, Chromium.Place);
        _service = await starting;
        Origin = new Uri(_service.Address);
    }

    /// <summary>Lets a new visitor, with no cookie and no history, do something; then asks what every visit has to keep: no error, nothing failed, nothing asked of another server.</summary>
    public async Task VisitAsync(Look look, Func<Visitor, Task> visit)
    {
        await using var context = await _browser.NewContextAsync(new()
        {
            BaseURL = Origin.ToString(),
            ViewportSize = new() { Width = look.Width, Height = look.Height },
            ColorScheme = look.Scheme,
            JavaScriptEnabled = look.HasScript,
            Locale = "en-US",
        });
        var visitor = new Visitor(await context.NewPageAsync(), Origin);
        await visit(visitor);
        visitor.ShouldHaveMetNothingWrong();
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null) await _browser.DisposeAsync();
        _playwright?.Dispose();
        if (_service is not null) await _service.DisposeAsync();
        _data.Dispose();
    }
}
