using System.Collections.Concurrent;

namespace PartsMatch.Browser.Tests.Support;

/// <summary>Someone at a page. What goes wrong behind their back is written down from the first request on.</summary>
public sealed class Visitor
{
    private readonly ConcurrentQueue<string> _wrong = [];
    private readonly ConcurrentDictionary<int, int> _expected = [];

    public Visitor(IPage page, Uri origin)
    {
        Page = page;
        page.Console += (_, message) =>
        {
            // A content policy that was broken is told of here too. A page with complaints answers 422, which the browser tells as an error.
            if (message.Type is "error" or "warning" && !_expected.Keys.Any(status => message.Text.Contains($"status of {status}", StringComparison.Ordinal))) _wrong.Enqueue($"console {message.Type}: {message.Text}");
        };
        page.PageError += (_, error) => _wrong.Enqueue($"script error: {error}");
        page.RequestFailed += (_, request) => _wrong.Enqueue($"{request.Method} {request.Url} failed: {request.Failure}");
        page.Request += (_, request) =>
        {
            if (!request.Url.StartsWith(origin.ToString(), StringComparison.Ordinal)) _wrong.Enqueue($"a request left the server: {request.Url}");
        };
        page.Response += (_, response) =>
        {
            if (response.Status >= 400 && !_expected.ContainsKey(response.Status)) _wrong.Enqueue($"{response.Request.Method} {response.Url} answered {response.Status}");
        };
    }

    public IPage Page { get; }

    /// <summary>Goes to an address as if it were typed or followed from a message.</summary>
    public async Task<IResponse> GoAsync(string address, int status = 200)
    {
        Expect(status);
        var response = await Page.GotoAsync(address);
        response!.Status.ShouldBe(status, address);
        return response;
    }

    /// <summary>What follows may be answered with this status.</summary>
    public void Expect(int status) => _expected.TryAdd(status, status);

    public Task PressAsync(string button) => Page.GetByRole(AriaRole.Button, new() { Name = button, Exact = true }).First.ClickAsync();

    /// <summary>Takes a step that leads to another page, and waits until it is loaded: a page that is still being left cannot be loaded again.</summary>
    public async Task ArriveByAsync(Func<Task> step)
    {
        var loaded = new TaskCompletionSource();
        Page.Load += Loaded;
        await step();
        await loaded.Task;
        Page.Load -= Loaded;

        void Loaded(object? sender, IPage page) => loaded.TrySetResult();
    }

    /// <summary>At the page that asks for a key.</summary>
    public async Task SignInAsync(string key)
    {
        await Field("key").FillAsync(key);
        await PressAsync("Sign in");
        await Page.GetByRole(AriaRole.Button, new() { Name = "Sign out" }).WaitForAsync();
    }

    public ILocator Field(string name) => Page.Locator($"[id=\"{name}\"]");

    public Task<string> HeadingAsync() => Page.Locator("h1").InnerTextAsync();

    /// <summary>Folded parts are part of the page: opened, so that what is in them is looked at as well.</summary>
    public Task UnfoldAsync() => Page.EvaluateAsync("() => document.querySelectorAll('details').forEach(one => one.open = true)");

    public void ShouldHaveMetNothingWrong() => _wrong.ShouldBeEmpty();
}
