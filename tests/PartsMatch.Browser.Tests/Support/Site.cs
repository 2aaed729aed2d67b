using System.Collections.Concurrent;
using PartsMatch.Browser.Tests.EveryPage;
using PartsMatch.Service.Tests.Support;
using Xunit.Sdk;

[assembly: AssemblyFixture(typeof(Site))]
[assembly: Xunit.v3.Parallelization(Mode = ParallelMode.All, MaxThreads = 3)]

namespace PartsMatch.Browser.Tests.Support;

/// <summary>The whole service as its program runs it, on a free port and the demo catalogue, and one browser that visits it: made once for all tests, which only read.</summary>
public class Site : IAsyncLifetime
{
    /// <summary>A visit takes seconds, and on two busy cores ten times as many. Some questions to a browser have no limit of their own: one that is never answered is told of, and the run goes on.</summary>
    private static readonly TimeSpan LongestVisit = TimeSpan.FromMinutes(3);

    /// <summary>After so many visits that did not end there is no use in waiting for more.</summary>
    private const int MostUnended = 3;

    private readonly TestFolder _data = new();
    private readonly ConcurrentDictionary<(string Page, string Look), Lazy<Task<Inspection>>> _inspections = [];
    private RunningService _service = null!;
    private IPlaywright _playwright = null!;
    private IBrowser _browser = null!;
    private string? _signedIn;
    private int _unended;

    public Uri Origin { get; private set; } = null!;

    /// <summary>For writing, as the service told it at its start.</summary>
    public string Key { get; private set; } = null!;

    /// <summary>Settings beside the data folder and the port.</summary>
    protected virtual IReadOnlyList<string> Settings => [];

    public async ValueTask InitializeAsync()
    {
        SomethingLived.WriteWeights(_data);
        var starting = RunningService.StartAsync([$"--data={_data.Path}", "--urls=http://127.0.0.1:0", .. Settings]);
        _playwright = await Playwright.CreateAsync();
        _browser = await Chromium.StartAsync(_playwright, Chromium.Place);
        _service = await starting;
        Origin = new Uri(_service.Address);
        Key = _service.Output.Split("shown this once: ")[1].Split('\n')[0].Trim();
        await KeepSignedInAsync();
        await LiveAsync();
    }

    /// <summary>What happens before anybody visits.</summary>
    protected virtual Task LiveAsync() => SomethingLived.RecordAsync(Origin, Key);

    /// <summary>Lets a new visitor, with no cookie and no history, do something; then asks what every visit has to keep: no error, nothing failed, nothing asked of another server.</summary>
    public Task VisitAsync(Look look, Func<Visitor, Task> visit) => VisitAsync(look, hasKey: false, visit);

    /// <summary>The same for someone who signed in.</summary>
    public Task VisitSignedInAsync(Look look, Func<Visitor, Task> visit) => VisitAsync(look, hasKey: true, visit);

    /// <summary>The same at a page of the list, signed in where it asks for that.</summary>
    public Task VisitAsync(string page, Look look, Func<Visitor, SitePage, Task> visit) => VisitAsync(look, SitePage.Named(page).NeedsKey, async visitor =>
    {
        await visitor.GoAsync(SitePage.Named(page).Address, SitePage.Named(page).Status);
        await visit(visitor, SitePage.Named(page));
    });

    /// <summary>What there is to be seen of a page, looked at once for all tests.</summary>
    public Task<Inspection> InspectAsync(string page, string look) => _inspections.GetOrAdd((page, look), key => new(async () =>
    {
        Inspection? seen = null;
        await VisitAsync(key.Page, Look.Named(key.Look), async (visitor, asked) => seen = await Inspection.OfAsync(visitor, asked, Look.Named(key.Look)));
        return seen!;
    })).Value;

    private async Task VisitAsync(Look look, bool hasKey, Func<Visitor, Task> visit)
    {
        Volatile.Read(ref _unended).ShouldBeLessThan(MostUnended, "visits that never ended");
        var visiting = VisitToItsEndAsync(look, hasKey, visit);
        if (await Task.WhenAny(visiting, Task.Delay(LongestVisit)) != visiting)
        {
            Interlocked.Increment(ref _unended);
            throw new TimeoutException($"A visit ({look.Name}) did not end within {LongestVisit}.");
        }

        await visiting;
    }

    private async Task VisitToItsEndAsync(Look look, bool hasKey, Func<Visitor, Task> visit)
    {
        await using var context = await _browser.NewContextAsync(new()
        {
            BaseURL = Origin.ToString(),
            ViewportSize = new() { Width = look.Width, Height = look.Height },
            ColorScheme = look.Scheme,
            JavaScriptEnabled = look.HasScript,
            Locale = "en-US",
            StorageState = hasKey ? _signedIn : null,
        });
        var visitor = new Visitor(await context.NewPageAsync(), Origin);
        await visit(visitor);
        visitor.ShouldHaveMetNothingWrong();
    }

    /// <summary>Once, as a person does; visitors with a key come with the cookie that this one got.</summary>
    private Task KeepSignedInAsync() => VisitAsync(Look.Desk, async visitor =>
    {
        await visitor.GoAsync("/sign-in");
        await visitor.SignInAsync(Key);
        _signedIn = await visitor.Page.Context.StorageStateAsync();
    });

    public virtual async ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        if (_browser is not null) await _browser.DisposeAsync().AsTask().WaitAsync(LongestVisit);
        _playwright?.Dispose();
        if (_service is not null) await _service.DisposeAsync();
        _data.Dispose();
    }
}
